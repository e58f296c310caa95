using System.Text.Json;
using Microsoft.Extensions.Logging;
using Polly.CircuitBreaker;
using Polly.Timeout;
using StudioBot.Host.Health;
using StudioBot.Host.Logging;
using StudioBot.Host.Sending;
using StudioBot.Host.Turns;
using StudioBot.Records;
using StudioBot.Records.Post;
using Telegram.Bot;
using Telegram.Bot.Exceptions;

namespace StudioBot.Host.Telegram;

/// <summary>Asks the service for updates: what came is stored together with the next offset, and only then is asked on.
/// </summary>
/// <remarks>The library's own receiver moves its offset before an update is handled, and keeps it in memory
/// only.</remarks>
internal sealed class UpdateLoop(
    ITelegramBotClient bot,
    CallGuard guard,
    StudioFile file,
    Action<Action<StudioSession>, CancellationToken> receive,
    Pulse pulse,
    Outage outage,
    IWire wire,
    Counts counts,
    Backoff backoff,
    TimeProvider time,
    ILogger<UpdateLoop> log)
{
    private static readonly TimeSpan SecondPollerWait = TimeSpan.FromSeconds(30);
    private static readonly TimeSpan SecondPollerForgotten = TimeSpan.FromMinutes(30);

    private int troublesInRow;
    private long? secondPollerSeen;

    /// <summary>Until it is stopped, or the service refuses the token: only then it returns.</summary>
    public async Task Run(CancellationToken stop)
    {
        while (true)
        {
            try
            {
                await Poll(stop);
                troublesInRow = 0;
            }
            catch (ApiRequestException no) when (Refusals.Of(no) == Refusal.Token)
            {
                return;
            }
            catch (UnwritableStudioException)
            {
                await Task.Delay(Outage.Rest, time, stop);
            }
            catch (Exception broken) when (!stop.IsCancellationRequested)
            {
                await Task.Delay(WaitAfter(broken), time, stop);
            }
        }
    }

    private async Task Poll(CancellationToken stop)
    {
        var request = new GetRawUpdatesRequest { Offset = file.Write(session => session.Offset.Next()) };
        var came = await guard.Once.ExecuteAsync(async inTime => await bot.SendRequest(request, inTime), stop);
        pulse.Polled();
        if (came.Length > 0)
        {
            await Store(came, stop);
        }
    }

    // What can't be stored is fetched again: the service keeps it until we ask on.
    private async Task Store(JsonElement[] came, CancellationToken stop)
    {
        var updates = came.Select(ReceivedUpdate.Of).OfType<ReceivedUpdate>().ToList();
        if (updates.Count < came.Length)
        {
            log.LogError(
                Events.UpdatesWithoutNumber, "{Count} updates came without a number and can't be kept.",
                came.Length - updates.Count);
        }

        if (updates.Count == 0)
        {
            throw new JsonException("None of the updates has a number.");
        }

        try
        {
            receive(session => Store(session, updates), stop);
        }
        catch (UnwritableStudioException full)
        {
            await outage.Tell(wire, updates.Select(update => update.Chat), full, stop);
            throw;
        }

        counts.Stored(updates.Count);
    }

    private void Store(StudioSession session, List<ReceivedUpdate> updates)
    {
        foreach (var update in updates)
        {
            session.Inbox.Store(Incoming(update), time.GetUtcNow());
        }

        // The last one received, not the highest: after a silent week the numbers start anew, maybe lower.
        session.Offset.Move(updates[^1].UpdateId + 1);
    }

    private static Incoming Incoming(ReceivedUpdate update) =>
        new(update.UpdateId, update.Chat, update.Kind, update.Raw)
        {
            MessageId = update.Message,
            PressId = update.Press,
        };

    // Two that poll take turns at being refused: it is said once for as long as that goes on.
    private void SeeSecondPoller()
    {
        var isNew = secondPollerSeen is not { } seen || time.GetElapsedTime(seen) > SecondPollerForgotten;
        secondPollerSeen = time.GetTimestamp();
        if (!isNew)
        {
            return;
        }

        log.LogWarning(
            Events.SecondPoller, "Another program polls with this token; each gets only part of the messages.");
        var now = time.GetUtcNow();
        file.Write(session => StewardNotice.Put(
            session,
            $"second poller {now:yyyy-MM-dd}",
            now,
            null,
            "Another program reads messages with my token, so each of us gets only some of them.",
            "Stop the other one, or take a new token."));
    }

    private TimeSpan WaitAfter(Exception broken)
    {
        if (broken is ApiRequestException no && Refusals.Of(no) == Refusal.SecondPoller)
        {
            SeeSecondPoller();
            return SecondPollerWait;
        }

        var wait = (broken as RequestException is { } way ? Refusals.Rest(way) : null)
            ?? backoff.After(++troublesInRow);
        if (broken is RequestException or TimeoutRejectedException or BrokenCircuitException)
        {
            log.LogWarning(
                Events.PollFailed, "The service does not answer, again in {Wait}: {Why}", wait, broken.Message);
        }
        else
        {
            log.LogError(Events.PollBroke, broken, "Updates could not be fetched or stored, again in {Wait}.", wait);
        }

        return wait;
    }
}
