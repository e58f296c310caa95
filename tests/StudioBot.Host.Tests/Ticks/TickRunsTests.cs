using Microsoft.Extensions.Logging;
using Microsoft.Extensions.Time.Testing;
using StudioBot.Host.Tests.Support;
using StudioBot.Host.Ticks;

namespace StudioBot.Host.Tests.Ticks;

public sealed class TickRunsTests : IDisposable
{
    private readonly FakeTimeProvider clock = new();
    private readonly CapturedLog log = new();
    private readonly LoggerFactory loggers;
    private readonly ManualResetEventSlim end = new();
    private readonly TickRuns runs;
    private int hangs;
    private int others;

    public TickRunsTests()
    {
        loggers = new LoggerFactory([log]);
        runs = new TickRuns(clock, loggers.CreateLogger<TickRuns>());
    }

    public void Dispose()
    {
        end.Set();
        loggers.Dispose();
        end.Dispose();
    }

    [Fact]
    public async Task What_hangs_is_dropped_after_half_a_minute_and_told_and_the_others_go_on()
    {
        var hung = Hang();
        await Patience.Until(() => Volatile.Read(ref hangs) == 1);
        await Other();
        clock.Advance(TickRuns.Longest - TimeSpan.FromSeconds(1));
        Assert.False(hung.IsCompleted);
        clock.Advance(TimeSpan.FromSeconds(1));
        await hung.WaitAsync(TimeSpan.FromSeconds(10));
        Assert.Contains("Hanging takes over 00:00:30 and is dropped", log.Text, StringComparison.Ordinal);
        await Other();
        Assert.Equal(2, others);
    }

    [Fact]
    public async Task It_is_not_begun_again_before_it_has_ended()
    {
        var hung = Hang();
        await Patience.Until(() => Volatile.Read(ref hangs) == 1);
        clock.Advance(TickRuns.Longest);
        await hung.WaitAsync(TimeSpan.FromSeconds(10));
        await Hang().WaitAsync(TimeSpan.FromSeconds(10));
        Assert.Equal(1, hangs);

        end.Set();
        await Patience.Until(() =>
        {
            Hang().Wait(TimeSpan.FromSeconds(10));
            return Volatile.Read(ref hangs) == 2;
        });
    }

    [Fact]
    public async Task What_breaks_is_told_and_runs_again()
    {
        await runs.Run("Breaking", () => throw new InvalidOperationException("ours"), CancellationToken.None);
        Assert.Contains("Breaking broke; the next tick looks again.", log.Text, StringComparison.Ordinal);
        await runs.Run("Breaking", () => others++, CancellationToken.None);
        Assert.Equal(1, others);
    }

    private Task Hang() => runs.Run(
        "Hanging",
        () =>
        {
            Interlocked.Increment(ref hangs);
            end.Wait();
        },
        CancellationToken.None);

    private Task Other() => runs.Run("Other", () => others++, CancellationToken.None).WaitAsync(TimeSpan.FromSeconds(10));
}
