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

    /// <summary>Whether it answers a message of the bot, which makes it meant for the bot in a group.</summary>
    public bool RepliesToBot { get; init; }
}
