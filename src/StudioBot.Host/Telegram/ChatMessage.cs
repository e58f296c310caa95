using StudioBot.Chat;
using StudioBot.Records.Members;

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

    /// <summary>Whether it is somebody else's word: passed on, or written by another bot.</summary>
    public bool IsForwarded { get; init; }

    /// <summary>In whose name it was written, where nobody knows by whom: a group's or a channel's.</summary>
    public Standing? Mask { get; init; }

    /// <summary>The service's name of a photo that came with it; none where none did.</summary>
    public string? Photo { get; init; }

    /// <summary>It came by a button that agrees to what was doubted.</summary>
    public bool IsAgreed { get; init; }

    /// <summary>It stood on a button itself, where anybody could have put it: such a line only asks.</summary>
    public bool IsCarried { get; init; }

    /// <summary>The number its chat had when it was written, where it has another by now: the message's own number
    /// means nothing there.</summary>
    public long? MovedFrom { get; init; }
}
