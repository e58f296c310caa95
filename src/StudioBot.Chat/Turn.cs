using StudioBot.Craft.Reminders;
using StudioBot.Records.Members;

namespace StudioBot.Chat;

/// <summary>One message and all that is known about it: the only way in which time and place reach a command.</summary>
/// <param name="Words">As typed.</param>
/// <param name="Chat">Where.</param>
/// <param name="Who">By whom.</param>
/// <param name="Local">When it was typed, in studio time.</param>
public sealed record Turn(string Words, ChatKind Chat, Speaker Who, DateTime Local)
{
    /// <summary>The bot's own user name, without the @; mentions of it are taken off the front of a message.</summary>
    public string BotName { get; init; } = "studio_bot";

    /// <summary>Makes a link that opens the bot and sends it <c>/start</c> with these words behind it (up to 64 of
    /// letters, figures, _ and -); none where no chat service knows the bot.</summary>
    public Func<string, string>? Link { get; init; }

    /// <summary>Whether it answers a message of the bot, which makes it meant for the bot in a group.</summary>
    public bool RepliesToBot { get; init; }

    /// <summary>The studio's wall clock.</summary>
    public StudioZone Zone { get; init; } = new(TimeZoneInfo.Utc);

    /// <summary>When it was typed. Unless set, by <see cref="Local"/>.</summary>
    public DateTimeOffset Now
    {
        get => field == default ? Zone.InstantOf(DateOnly.FromDateTime(Local), TimeOnly.FromDateTime(Local)) : field;
        init;
    }

    /// <summary>Who wrote it, where they belong to the studio.</summary>
    public Member? Member { get; init; }

    /// <summary>In whose name it was written, where nobody knows by whom: a group's or a channel's.</summary>
    public Standing? Mask { get; init; }

    /// <summary>The account that wrote it; none where there is no chat service.</summary>
    public long? UserId { get; init; }

    /// <summary>The chat it was written in; none where there is none.</summary>
    public long? ChatId { get; init; }

    /// <summary>Which message it is; none where it is none.</summary>
    public long? MessageId { get; init; }

    /// <summary>The chat service's name of a photo that came with it; none where none did.</summary>
    public string? Photo { get; init; }

    /// <summary>It was sent by a button that agrees to what was doubted.</summary>
    public bool IsAgreed { get; init; }

    /// <summary>Draws a code of so many letters that nobody can guess: chance, too, reaches a command only by its turn.
    /// Where nothing is recorded there is none to be had.</summary>
    public Func<int, string> NewCode { get; init; } =
        _ => throw new InvalidOperationException("A turn in which codes are drawn brings its own source.");
}
