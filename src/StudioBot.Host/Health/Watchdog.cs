using Microsoft.Extensions.Hosting.Systemd;
using Microsoft.Extensions.Logging;
using StudioBot.Host.Logging;

namespace StudioBot.Host.Health;

/// <summary>Looks after the service itself: says in the log when it is not ready and when it is again, tells systemd
/// that it is well, and ends it where it hangs, so that whoever started it starts it anew.</summary>
/// <param name="vitals">How it is.</param>
/// <param name="systemd">Where systemd hears of it; without systemd nobody does.</param>
/// <param name="end">Ends the process on the spot, with the reason.</param>
/// <param name="time">The clock.</param>
/// <param name="log">Where trouble is told.</param>
internal sealed class Watchdog(
    Wellbeing vitals, ISystemdNotifier systemd, Action<string> end, TimeProvider time, ILogger<Watchdog> log)
{
    /// <summary>How often it looks.</summary>
    public static readonly TimeSpan Interval = TimeSpan.FromSeconds(10);

    private static readonly ServiceState Well = new("WATCHDOG=1");

    private string? told;

    /// <summary>Until it is stopped.</summary>
    public async Task Run(CancellationToken stop)
    {
        systemd.Notify(ServiceState.Ready);
        var look = Task.CompletedTask;
        while (true)
        {
            // Not in this loop: a look that hangs must not hold it.
            look = look.IsCompleted ? Task.Run(vitals.Look, stop) : look;
            await Task.Delay(Interval, time, stop);
            Tell();
        }
    }

    /// <summary>Says how the service is, to whom it concerns.</summary>
    public void Tell()
    {
        if (vitals.Hang is { } hang)
        {
            log.LogCritical(Events.Hangs, "The service hangs and ends itself: {Why}.", hang);
            end(hang);
            return;
        }

        // A studio that can't be written is not mended by a new start.
        if (vitals.Silence is null)
        {
            systemd.Notify(Well);
        }

        var why = vitals.Unready;
        if (why is not null && told is null)
        {
            log.LogError(Events.NotReady, "Not ready: {Why}.", why);
        }
        else if (why is null && told is not null)
        {
            log.LogInformation(Events.ReadyAgain, "Ready again.");
        }

        told = why;
    }
}
