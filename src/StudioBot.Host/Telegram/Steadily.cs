using Microsoft.Extensions.Logging;
using StudioBot.Host.Logging;
using StudioBot.Host.Sending;
using StudioBot.Host.Turns;
using StudioBot.Records;

namespace StudioBot.Host.Telegram;

/// <summary>Keeps a loop going: what breaks it is logged, and after a growing wait it starts anew.</summary>
internal sealed class Steadily(Backoff backoff, TimeProvider time, ILogger<Steadily> log)
{
    private static readonly TimeSpan LongEnough = TimeSpan.FromMinutes(10);

    /// <summary>Until it is stopped, or the loop comes to its own end.</summary>
    public async Task Run(string name, Func<CancellationToken, Task> loop, CancellationToken stop)
    {
        for (var tries = 1; ; tries++)
        {
            var began = time.GetUtcNow();
            try
            {
                await loop(stop);
                return;
            }
            catch (Exception broken) when (!stop.IsCancellationRequested)
            {
                tries = time.GetUtcNow() - began > LongEnough ? 1 : tries;
                var wait = broken is UnwritableStudioException ? Outage.Rest : backoff.After(tries);
                log.LogError(Events.LoopBroke, broken, "{Loop} broke and goes on in {Wait}.", name, wait);
                await Task.Delay(wait, time, stop);
            }
        }
    }
}
