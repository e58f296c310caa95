using System.Collections.Concurrent;
using Microsoft.Extensions.Hosting;
using Microsoft.Extensions.Logging;
using Microsoft.Extensions.Time.Testing;
using NSubstitute;
using StudioBot.Host.Health;
using StudioBot.Host.Sending;
using StudioBot.Host.Telegram;
using StudioBot.Host.Turns;
using StudioBot.Records;

namespace StudioBot.Host.Tests.Support;

/// <summary>The whole service in this process, on a clock of ours and against the stand-in; Nora keeps house, Pia belongs
/// to it.</summary>
internal sealed class ServiceOnClock : IAsyncDisposable
{
    public const long Nora = 7;
    public const long Pia = 8;

    private static readonly TimeSpan Step = TimeSpan.FromMilliseconds(250);

    private readonly ConcurrentQueue<(Call Call, DateTimeOffset At)> seen = new();
    private readonly CapturedLog log = new();
    private readonly LoggerFactory loggers;
    private readonly StandIn standIn;
    private readonly Serving serving;
    private readonly Counts counts = new();

    // Those that came to this service and are not answered: one of the service before may still be.
    private readonly ConcurrentDictionary<Call, bool> open = new(ReferenceEqualityComparer.Instance);

    public ServiceOnClock(StandIn standIn)
    {
        this.standIn = standIn;
        loggers = new LoggerFactory([log]);
        File = StudioFile.OpenInMemory();
        Studios.Found(File, Clock.GetUtcNow().AddDays(-1), (Nora, "Nora"), (Pia, "Pia"));
        standIn.Came = See;
        standIn.Answered = call => open.TryRemove(call, out _);
        var pulse = new Pulse(Clock);
        var outage = new Outage(loggers.CreateLogger<Outage>());
        serving = new Serving(
            Bots.Settings(standIn),
            File,
            Studios.Practice,
            Bots.At(standIn),
            new Bell(Clock),
            new Pace(Clock),
            pulse,
            outage,
            counts,
            Senders.Backups("nowhere"),
            Substitute.For<IHostApplicationLifetime>(),
            Clock,
            loggers);
    }

    public FakeTimeProvider Clock { get; } = new(new DateTimeOffset(2026, 11, 25, 9, 0, 0, TimeSpan.Zero));

    public StudioFile File { get; }

    /// <summary>What was logged.</summary>
    public string Log => log.Text;

    /// <summary>Calls whose caller is kept waiting, so that the clock goes on beside them.</summary>
    public Func<Call, bool> IsHeld { get; set; } = _ => false;

    /// <summary>Every call, and when it came by our clock.</summary>
    public IReadOnlyList<(Call Call, DateTimeOffset At)> Seen => [.. seen];

    private string Told => string.Join('\n', Seen.Select(seen => $"{seen.Call.Method} {seen.Call.Chat} {seen.Call.Text}"));

    public bool TokenWasRefused => serving.TokenWasRefused;

    public Task Start() => serving.StartAsync(CancellationToken.None);

    /// <summary>Until this holds, with the clock going on whenever nothing is on its way.</summary>
    public async Task Until(Func<bool> holds)
    {
        using var enough = new CancellationTokenSource(TimeSpan.FromSeconds(30));
        while (!holds())
        {
            Assert.False(enough.IsCancellationRequested, $"What was waited for did not happen.\n{Log}\n{Told}");
            if (open.IsEmpty)
            {
                Clock.Advance(Step);
            }

            await Task.Delay(TimeSpan.FromMilliseconds(1), CancellationToken.None);
        }
    }

    public async ValueTask DisposeAsync()
    {
        await serving.StopAsync(CancellationToken.None);
        serving.Dispose();
        standIn.Came = _ => { };
        standIn.Answered = _ => { };
        File.Dispose();
        loggers.Dispose();
        counts.Dispose();
    }

    private void See(Call call)
    {
        seen.Enqueue((call, Clock.GetUtcNow()));
        if (Counts(call))
        {
            open[call] = true;
        }
    }

    // A poll waits by nature.
    private bool Counts(Call call) => call.Method != "getUpdates" && !IsHeld(call);
}
