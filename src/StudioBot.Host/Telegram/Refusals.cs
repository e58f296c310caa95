using Telegram.Bot.Exceptions;

namespace StudioBot.Host.Telegram;

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
        _ when Says(no, "message to edit not found") || Says(no, "can't be edited")
            || Says(no, "no text in the message to edit") => Refusal.NothingToEdit,
        _ when Says(no, "chat not found") => Refusal.ChatGone,
        _ => Refusal.Message,
    };

    private static bool Says(ApiRequestException no, string words) =>
        no.Message.Contains(words, StringComparison.OrdinalIgnoreCase);
}
