using System.Collections.Concurrent;
using Microsoft.Extensions.Logging;
using StudioBot.Host.Logging;

namespace StudioBot.Host.Ticks;

/// <summary>Runs what a tick does. What breaks is told and leaves the next tick as it was; what takes over half a
/// minute is told, dropped and not begun again before it has ended. Either way the other ticks go on.</summary>
internal sealed class TickRuns(TimeProvider time, ILogger<TickRuns> log)
{
    /// <summary>How long a tick may take.</summary>
    public static readonly TimeSpan Longest = TimeSpan.FromSeconds(30);

    private readonly ConcurrentDictionary<string, Task> dropped = new();

    /// <summary>Runs it, and waits for it no longer than that.</summary>
    /// <param name="what">What it does, for the log: “Looking for what is due”.</param>
    /// <param name="work">Does it.</param>
    /// <param name="stop">Waits no longer.</param>
    public async Task Run(string what, Action work, CancellationToken stop)
    {
        if (dropped.TryGetValue(what, out var before) && !before.IsCompleted)
        {
            return;
        }

        var run = Task.Run(() => Do(what, work), CancellationToken.None);
        if (await Task.WhenAny(run, Task.Delay(Longest, time, stop)) != run && !stop.IsCancellationRequested)
        {
            dropped[what] = run;
            log.LogError(
                Events.TickDropped, "{What} takes over {Longest} and is dropped; the others go on.", what, Longest);
        }
    }

    private void Do(string what, Action work)
    {
        try
        {
            work();
        }
        catch (Exception broken)
        {
            log.LogError(Events.TickBroke, broken, "{What} broke; the next tick looks again.", what);
        }
    }
}
