namespace StudioBot.Chat;

/// <summary>Where something is said, as far as it matters to who may say it.</summary>
public enum Place
{
    /// <summary>Between one person and the bot.</summary>
    Private,

    /// <summary>In the studio's own group.</summary>
    StudioGroup,

    /// <summary>In a group of others, whoever is in it.</summary>
    OtherGroup,
}
