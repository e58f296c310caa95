namespace StudioBot.Host.Telegram;

/// <summary>Why the chat service said no, told by its code first and its words second.</summary>
internal enum Refusal
{
    /// <summary>Too much at once; it says how long to wait.</summary>
    TooMany,

    /// <summary>Its own trouble: nobody knows whether the message got through.</summary>
    ServiceDown,

    /// <summary>The token is wrong or was taken back.</summary>
    Token,

    /// <summary>Somebody else polls with this token.</summary>
    SecondPoller,

    /// <summary>The chat has another number now.</summary>
    Moved,

    /// <summary>The bot may not write there: blocked, kicked, deactivated, or no such chat.</summary>
    ChatGone,

    /// <summary>An edit that changes nothing.</summary>
    NotModified,

    /// <summary>There is nothing to edit any more.</summary>
    NothingToEdit,

    /// <summary>The message itself was not taken: our mistake.</summary>
    Message,
}
