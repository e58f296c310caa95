using Microsoft.Extensions.Hosting.Systemd;
using Microsoft.Extensions.Logging;
using Microsoft.Extensions.Time.Testing;
using NSubstitute;
using StudioBot.Host.Health;
using StudioBot.Host.Tests.Support;
using StudioBot.Host.Turns;
using StudioBot.Records;

namespace StudioBot.Host.Tests.Health;

/// <summary>The figures are those the service promises: silence after five minutes, a hang after one, ended within ninety seconds.</summary>
public sealed class WatchdogTests : IDisposable
{
    private static readonly TimeSpan LongestUntilEnd = TimeSpan.FromSeconds(90);

    private readonly FakeTimeProvider time = new(new DateTimeOffset(2026, 11, 25, 9, 0, 0, TimeSpan.Zero));
    private readonly TempFolder folder = new();
    private readonly StudioFile file;
    private readonly Pulse pulse;
    private readonly Vitals vitals;
    private readonly CapturedLog log = new();
    private readonly ISystemdNotifier systemd = Substitute.For<ISystemdNotifier>();
    private readonly List<string> ended = [];
    private readonly LoggerFactory loggers;
    private readonly Watchdog watchdog;

    public WatchdogTests()
    {
        file = StudioFile.Open(folder.StudioPath);
        pulse = new Pulse(time);
        loggers = new LoggerFactory([log]);
        var clock = new ClockCheck(file, time, loggers.CreateLogger<ClockCheck>());
        vitals = new Vitals(file, pulse, new Outage(loggers.CreateLogger<Outage>()), clock, time);
        watchdog = new Watchdog(vitals, systemd, ended.Add, time, loggers.CreateLogger<Watchdog>());
    }

    public void Dispose()
    {
        loggers.Dispose();
        file.Dispose();
        folder.Dispose();
    }

    [Fact]
    public async Task Systemd_hears_that_it_is_ready_and_then_again_and_again_that_it_is_well()
    {
        using var stop = new CancellationTokenSource();
        var running = watchdog.Run(stop.Token);
        systemd.Received(1).Notify(ServiceState.Ready);
        await Patience.Until(time, Watchdog.Interval, () => Fed() >= 3);
        await Patience.End(running, stop);
    }

    [Fact]
    public void When_the_chat_service_falls_silent_systemd_is_no_longer_told_and_the_log_says_so_once()
    {
        Pass(TimeSpan.FromMinutes(1), polling: true);
        Pass(TimeSpan.FromMinutes(5), polling: false);
        var before = Fed();
        Pass(TimeSpan.FromMinutes(2), polling: false);
        Assert.Equal(before, Fed());
        Assert.Contains("nothing was heard from the chat service", vitals.Unready, StringComparison.Ordinal);
        Assert.Equal(1, Logged("Not ready"));

        Pass(TimeSpan.FromMinutes(1), polling: true);
        Assert.True(Fed() > before);
        Assert.Null(vitals.Unready);
        Assert.Equal(1, Logged("Ready again"));
        Assert.Empty(ended);
    }

    [Fact]
    public async Task A_studio_that_answers_nobody_ends_the_service_within_ninety_seconds()
    {
        using var gate = new ManualResetEventSlim();
        using var taken = new ManualResetEventSlim();
        var hanging = Task.Run(() => file.Write(_ =>
        {
            taken.Set();
            gate.Wait();
        }));
        taken.Wait();
        var look = Task.Run(vitals.Look);
        Pass(LongestUntilEnd, polling: true, looking: false);
        gate.Set();
        await Task.WhenAll(hanging, look);
        Assert.Contains("gave no answer", Assert.Single(ended.Distinct()), StringComparison.Ordinal);
    }

    [Fact]
    public void A_studio_that_can_t_be_written_is_not_ready_and_not_ended()
    {
        file.Dispose();
        Pass(TimeSpan.FromMinutes(10), polling: true);
        Assert.Contains("can't be written", vitals.Unready, StringComparison.Ordinal);
        Assert.Empty(ended);
    }

    [Fact]
    public void Before_the_chat_service_has_answered_it_is_alive_and_not_ready()
    {
        vitals.Look();
        Assert.Null(vitals.Hang);
        Assert.Equal("the chat service has not answered yet", vitals.Unready);
        pulse.Polled();
        Assert.Null(vitals.Unready);
    }

    private int Fed() => systemd.ReceivedCalls().Count(call =>
        call.GetArguments() is [ServiceState state] && state.ToString() == "WATCHDOG=1");

    private int Logged(string words) => log.Text.Split('\n').Count(line => line.Contains(words, StringComparison.Ordinal));

    private void Pass(TimeSpan span, bool polling, bool looking = true)
    {
        for (var passed = TimeSpan.Zero; passed < span; passed += Watchdog.Interval)
        {
            time.Advance(Watchdog.Interval);
            if (polling)
            {
                pulse.Polled();
            }

            if (looking)
            {
                vitals.Look();
            }

            watchdog.Tell();
        }
    }
}
