using Microsoft.Extensions.Logging;
using Polly.CircuitBreaker;
using Polly.Timeout;
using StudioBot.Host.Logging;
using StudioBot.Host.Sending;
using Telegram.Bot;
using Telegram.Bot.Exceptions;
using Telegram.Bot.Requests;
using Telegram.Bot.Requests.Abstractions;
using Telegram.Bot.Types;

namespace StudioBot.Host.Telegram;

/// <summary>The way out to Telegram. What it tells of troubles is kept with the post, so no token may stand in it.
/// </summary>
internal sealed class TelegramWire(ITelegramBotClient bot, CallGuard guard, ILogger<TelegramWire> log) : IWire
{

    /// <inheritdoc/>
    public Task<Delivery> Send(long chat, Letter letter, CancellationToken cancellation) =>
        Deliver(new Attempt(chat, letter), cancellation);

    /// <inheritdoc/>
    public Task<Delivery> Edit(long chat, long message, Letter letter, CancellationToken cancellation) =>
        Deliver(new Attempt(chat, letter) { Message = (int)message }, cancellation);

    /// <inheritdoc/>
    public async Task<Delivery> Pin(long chat, long message, bool isPinned, CancellationToken cancellation)
    {
        try
        {
            await guard.Once.ExecuteAsync(
                async inTime => await bot.SendRequest(LetterRequest.Pin(chat, (int)message, isPinned), inTime),
                cancellation);
            return new Delivery.Sent(message);
        }
        catch (ApiRequestException no)
        {
            return Refusals.Of(no) switch
            {
                Refusal.TooMany => new Delivery.Again(Refusals.Rest(no), Redaction.Of(no.Message)),
                Refusal.ChatGone => new Delivery.Gone(Redaction.Of(no.Message)),
                Refusal.Moved when no.Parameters!.MigrateToChatId is { } now && now != chat => new Delivery.Moved(now),
                Refusal.NotModified or Refusal.NothingToEdit => new Delivery.Sent(message),
                Refusal.Message => new Delivery.Refused(Redaction.Of(no.Message)),
                _ => new Delivery.Again(null, Redaction.Of(no.Message)),
            };
        }
        catch (BrokenCircuitException pause)
        {
            return new Delivery.Again(pause.RetryAfter, "the service is being left alone for a while");
        }
        catch (Exception trouble) when (trouble is TimeoutRejectedException or RequestException)
        {
            // Pinned twice is pinned once.
            var rest = trouble is RequestException broken ? Refusals.Rest(broken) : null;
            return new Delivery.Again(rest, Redaction.Of(trouble.Message));
        }
    }

    /// <inheritdoc/>
    public async Task<bool> AnswerPress(string press, string? notice, CancellationToken cancellation)
    {
        var request = new AnswerCallbackQueryRequest { CallbackQueryId = press, Text = notice };
        try
        {
            return await guard.Once.ExecuteAsync(
                async inTime => await bot.SendRequest(request, inTime), cancellation);
        }
        catch (Exception trouble) when (IsTroubleOfTheWay(trouble) || !cancellation.IsCancellationRequested)
        {
            log.LogInformation(Events.PressNotAnswered, "A press could not be answered: {Why}", trouble.Message);
            return false;
        }
    }

    private async Task<Delivery> Deliver(Attempt attempt, CancellationToken cancellation)
    {
        try
        {
            var sent = await guard.Once.ExecuteAsync(
                async inTime => await bot.SendRequest(attempt.Request(), inTime), cancellation);
            return new Delivery.Sent(sent.Id);
        }
        catch (ApiRequestException no)
        {
            return await Refused(attempt, no, cancellation);
        }
        catch (BrokenCircuitException pause)
        {
            return new Delivery.Again(pause.RetryAfter, "the service is being left alone for a while");
        }
        catch (TimeoutRejectedException late)
        {
            return new Delivery.Unclear(Redaction.Of(late.Message));
        }
        catch (RequestException broken)
        {
            var why = Redaction.Of(broken.Message);
            return Refusals.Rest(broken) is { } rest ? new Delivery.Again(rest, why)
                : NeverLeft(broken) ? new Delivery.Again(null, why)
                : new Delivery.Unclear(why);
        }
    }

    private async Task<Delivery> Refused(Attempt attempt, ApiRequestException no, CancellationToken cancellation)
    {
        switch (Refusals.Of(no))
        {
            case Refusal.TooMany:
                return new Delivery.Again(Refusals.Rest(no), Redaction.Of(no.Message));
            case Refusal.ServiceDown:
                return new Delivery.Unclear(Redaction.Of(no.Message));
            case Refusal.ChatGone:
                return new Delivery.Gone(Redaction.Of(no.Message));
            case Refusal.NotModified when attempt.Message is { } same:
                return new Delivery.Sent(same);
            case Refusal.Moved when no.Parameters!.MigrateToChatId is { } now && now != attempt.Chat:
                return new Delivery.Moved(now);
            case Refusal.NothingToEdit when attempt.Message is not null:
                return await Deliver(attempt with { Message = null }, cancellation);
            case Refusal.Message when attempt.Letter is { BringsPicture: true, Plain.Length: > 0 }:
                log.LogError(
                    Events.PictureNotTaken, "A picture was not taken and its words go out without it: {Why}",
                    no.Message);
                return await Deliver(
                    attempt with { Letter = attempt.Letter with { File = null } }, cancellation);
            case Refusal.Message when !attempt.IsBare:
                log.LogError(
                    Events.SentAsPlain, "A message was not taken and goes out as plain text: {Why}", no.Message);
                return await Deliver(attempt with { IsBare = true }, cancellation);
            case Refusal.Message:
                return new Delivery.Refused(Redaction.Of(no.Message));
            default:
                return new Delivery.Again(null, Redaction.Of(no.Message));
        }
    }

    // Nothing reached the service where there was no connection at all.
    private static bool NeverLeft(RequestException broken) =>
        broken.InnerException is HttpRequestException
        {
            HttpRequestError: HttpRequestError.ConnectionError
                or HttpRequestError.NameResolutionError
                or HttpRequestError.SecureConnectionError,
        };

    private static bool IsTroubleOfTheWay(Exception trouble) =>
        trouble is RequestException or TimeoutRejectedException or BrokenCircuitException;

    /// <summary>One try, and what earlier ones taught: whether markup is taken.</summary>
    private sealed record Attempt(long Chat, Letter Letter)
    {
        public int? Message { get; init; }

        public bool IsBare { get; init; }

        public IRequest<Message> Request() => Message is { } message
            ? LetterRequest.Edit(Chat, message, Letter, IsBare)
            : LetterRequest.Send(Chat, Letter, IsBare);
    }
}
