using Microsoft.Extensions.Logging;
using StudioBot.Records;

namespace StudioBot.Host.Ticks;

/// <summary>Once a day, and at start: forgets what was settled long ago.</summary>
internal sealed class Nightly(StudioFile file, TimeProvider time, ILogger<Nightly> log)
{
    private static readonly TimeSpan Interval = TimeSpan.FromDays(1);

    /// <summary>Until it is stopped.</summary>
    public async Task Run(CancellationToken stop)
    {
        while (true)
        {
            Forget();
            await Task.Delay(Interval, time, stop);
        }
    }

    private void Forget()
    {
        var rows = file.Write(session =>
        {
            var now = time.GetUtcNow();
            return session.Inbox.Prune(now) + session.Post.Prune(now) + session.Presses.Prune(now);
        });
        log.LogDebug("Forgot {Rows} rows that were settled long ago.", rows);
    }
}
