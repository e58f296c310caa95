using StudioBot.Chat.Replies;

namespace StudioBot.Chat;

/// <summary>What came of a message.</summary>
/// <param name="Reply">What its author hears.</param>
/// <param name="OnlyAsked">Nothing was, or would have been, recorded: it may be answered anew when it is
/// corrected.</param>
public sealed record Outcome(Reply Reply, bool OnlyAsked)
{
    /// <summary>What others hear.</summary>
    public IReadOnlyList<Aside> Asides { get; init; } = [];

    /// <summary>Something was recorded.</summary>
    public bool Recorded { get; init; }

    /// <summary>The studio may know another word since: what was gathered of them is to be gathered anew.</summary>
    public bool MayName { get; init; }

    /// <summary>It was refused, for the book of refusals; none where it was not.</summary>
    public Barred? Barred { get; init; }

    /// <summary>Nothing is said of it: who asks has heard it already, or is not to hear anything.</summary>
    public bool IsSilent { get; init; }
}
