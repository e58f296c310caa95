using StudioBot.Chat;

namespace StudioBot.Host.Telegram;

/// <summary>Words that somebody wrote, or said by pressing a button.</summary>
/// <param name="Chat">Where: the service's number.</param>
/// <param name="Kind">What kind of place that is.</param>
/// <param name="Id">The message that is answered.</param>
/// <param name="UserId">By whom: the service's number.</param>
/// <param name="Name">By whom: the name they show.</param>
/// <param name="Words">As typed; a photo's caption counts. Empty where there are none.</param>
/// <param name="At">When they were typed, UTC.</param>
internal sealed record ChatMessage(
    long Chat, ChatKind Kind, long Id, long UserId, string Name, string Words, DateTimeOffset At)
{
    /// <summary>Whether it answers a message of the bot.</summary>
    public bool RepliesToBot { get; init; }

    /// <summary>Whether it is somebody else's word, passed on.</summary>
    public bool IsForwarded { get; init; }

    /// <summary>Whether it was written in the name of a group or a channel, so that nobody knows by whom.</summary>
    public bool IsAnonymous { get; init; }

    /// <summary>The service's name of a photo that came with it; none where none did.</summary>
    public string? Photo { get; init; }

    /// <summary>It came by a button that agrees to what was doubted.</summary>
    public bool IsAgreed { get; init; }
}
