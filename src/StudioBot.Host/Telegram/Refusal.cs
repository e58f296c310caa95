using Telegram.Bot.Exceptions;

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

/// <summary>Reads refusals.</summary>
internal static class Refusals
{
    /// <summary>The kind of this refusal.</summary>
    public static Refusal Of(ApiRequestException no) => no.ErrorCode switch
    {
        _ when no.Parameters?.MigrateToChatId is not null => Refusal.Moved,
        429 => Refusal.TooMany,
        401 => Refusal.Token,
        403 => Refusal.ChatGone,
        409 => Refusal.SecondPoller,
        >= 500 => Refusal.ServiceDown,
        _ when Says(no, "not modified") => Refusal.NotModified,
        _ when Says(no, "message to edit not found") || Says(no, "can't be edited") => Refusal.NothingToEdit,
        _ when Says(no, "chat not found") => Refusal.ChatGone,
        _ => Refusal.Message,
    };

    private static bool Says(ApiRequestException no, string words) =>
        no.Message.Contains(words, StringComparison.OrdinalIgnoreCase);
}
