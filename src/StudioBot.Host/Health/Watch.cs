using Microsoft.Extensions.Hosting;
using Microsoft.Extensions.Logging;
using StudioBot.Host.Sending;
using StudioBot.Host.Telegram;

namespace StudioBot.Host.Health;

/// <summary>Looks after the service beside its studios until it is stopped.</summary>
internal sealed class Watch(Watchdog watchdog, HealthPort port, TimeProvider time, ILoggerFactory loggers)
    : BackgroundService
{
    private readonly Backoff backoff = new(Random.Shared);

    /// <inheritdoc/>
    protected override Task ExecuteAsync(CancellationToken stoppingToken) => Task.WhenAll(
        Steady("Watching", watchdog.Run, stoppingToken), Steady("Telling how it is", port.Run, stoppingToken));

    private Task Steady(string name, Func<CancellationToken, Task> loop, CancellationToken stop) =>
        new Steadily(backoff, time, loggers.CreateLogger<Steadily>()).Run(name, loop, stop);
}
