using Microsoft.Extensions.Logging;

namespace StudioBot.Host.Health;

/// <summary>Says in the log when the chat service has fallen silent, and when it is back: once each.</summary>
internal sealed class SilenceWatch(Pulse pulse, TimeProvider time, ILogger<SilenceWatch> log)
{
    private static readonly TimeSpan Interval = TimeSpan.FromSeconds(30);

    /// <summary>Until it is stopped.</summary>
    public async Task Run(CancellationToken stop)
    {
        var wasAlive = true;
        while (true)
        {
            await Task.Delay(Interval, time, stop);
            if (pulse.IsAlive == wasAlive)
            {
                continue;
            }

            wasAlive = pulse.IsAlive;
            if (wasAlive)
            {
                log.LogInformation("The chat service answers again.");
            }
            else
            {
                log.LogError("Nothing was heard from the chat service since {LastPoll:u}.", pulse.LastPoll);
            }
        }
    }
}
