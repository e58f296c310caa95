using System.Net;
using Telegram.Bot.Exceptions;

namespace StudioBot.Host.Telegram;

/// <summary>Reads refusals.</summary>
internal static class Refusals
{
    // Where the service names no time, as it should.
    private static readonly TimeSpan UnnamedRest = TimeSpan.FromSeconds(30);
    private static readonly TimeSpan ShortestRest = TimeSpan.FromSeconds(1);

    /// <summary>How long we are asked to keep still; none where it was not too much that was asked.</summary>
    public static TimeSpan? Rest(RequestException no) => no switch
    {
        ApiRequestException { ErrorCode: 429, Parameters.RetryAfter: { } seconds } =>
            TimeSpan.FromSeconds(seconds) is var rest && rest > ShortestRest ? rest : ShortestRest,
        ApiRequestException { ErrorCode: 429 } or { HttpStatusCode: HttpStatusCode.TooManyRequests } => UnnamedRest,
        _ => null,
    };

    /// <summary>The kind of this refusal.</summary>
    public static Refusal Of(ApiRequestException no) => no.ErrorCode switch
    {
        _ when no.Parameters?.MigrateToChatId is not null => Refusal.Moved,
        429 => Refusal.TooMany,
        401 => Refusal.Token,
        403 => Refusal.ChatGone,
        409 => Refusal.SecondPoller,
        >= 500 => Refusal.ServiceDown,
        _ when Says(no, "not modified") || Says(no, "NOT_MODIFIED") => Refusal.NotModified,
        _ when Says(no, "message to edit not found") || Says(no, "can't be edited")
            || Says(no, "no text in the message to edit")
            || Says(no, "message to pin not found") || Says(no, "message to unpin not found") => Refusal.NothingToEdit,
        _ when Says(no, "chat not found") => Refusal.ChatGone,
        _ => Refusal.Message,
    };

    private static bool Says(ApiRequestException no, string words) =>
        no.Message.Contains(words, StringComparison.OrdinalIgnoreCase);
}
