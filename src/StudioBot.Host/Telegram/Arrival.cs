using Microsoft.Extensions.Logging;
using Polly.CircuitBreaker;
using Polly.Timeout;
using StudioBot.Host.Logging;
using StudioBot.Host.Sending;
using Telegram.Bot;
using Telegram.Bot.Exceptions;
using Telegram.Bot.Requests;
using Telegram.Bot.Types;

namespace StudioBot.Host.Telegram;

/// <summary>What is said to the service once at start, before anything is asked of it.</summary>
internal sealed class Arrival(
    ITelegramBotClient bot, CallGuard guard, Backoff backoff, TimeProvider time, ILogger<Arrival> log)
{
    /// <summary>Takes a webhook away (messages that wait stay), and learns who we are.</summary>
    /// <returns>Ourselves; nothing where the service refuses the token. A service that is down is waited for.</returns>
    public async Task<User?> Introduce(CancellationToken stop)
    {
        for (var tries = 1; ; tries++)
        {
            try
            {
                await Ask(new DeleteWebhookRequest(), stop);
                return await Ask(new GetMeRequest(), stop);
            }
            catch (ApiRequestException no) when (no.ErrorCode is 401 or 404)
            {
                return null;
            }
            catch (Exception trouble) when (IsTroubleOfTheWay(trouble))
            {
                var wait = RestAfter(trouble) ?? backoff.After(tries);
                log.LogWarning(
                    Events.ServiceUnreachable, "The service can't be reached, again in {Wait}: {Why}",
                    wait, trouble.Message);
                await Task.Delay(wait, time, stop);
            }
        }
    }

    /// <summary>Sets the menus; the bot works without them too.</summary>
    public async Task SetMenus(IEnumerable<SetMyCommandsRequest> menus, CancellationToken stop)
    {
        foreach (var menu in menus)
        {
            while (await Set(menu, stop) is { } rest)
            {
                await Task.Delay(rest, time, stop);
            }
        }
    }

    // For how long we are asked to keep still before it can be set.
    private async Task<TimeSpan?> Set(SetMyCommandsRequest menu, CancellationToken stop)
    {
        try
        {
            await Ask(menu, stop);
            return null;
        }
        catch (Exception trouble) when (IsTroubleOfTheWay(trouble))
        {
            log.LogWarning(Events.MenuNotSet, "The command menu could not be set: {Why}", trouble.Message);
            return RestAfter(trouble);
        }
    }

    private static TimeSpan? RestAfter(Exception trouble) =>
        trouble is RequestException no ? Refusals.Rest(no) : null;

    private async Task<T> Ask<T>(RequestBase<T> request, CancellationToken stop) =>
        await guard.Repeating.ExecuteAsync(async inTime => await bot.SendRequest(request, inTime), stop);

    private static bool IsTroubleOfTheWay(Exception trouble) =>
        trouble is RequestException or TimeoutRejectedException or BrokenCircuitException;
}
