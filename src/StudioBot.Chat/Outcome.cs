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

    /// <summary>A key under which it is said at most once; none: whenever it comes to that.</summary>
    public string? SaidOnce { get; init; }
}
