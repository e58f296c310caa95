namespace StudioBot.Chat;

/// <summary>Where a message was written.</summary>
public enum ChatKind
{
    /// <summary>One person and the bot.</summary>
    Private,

    /// <summary>The studio's group, where only what is meant for the bot is.</summary>
    Group,
}
