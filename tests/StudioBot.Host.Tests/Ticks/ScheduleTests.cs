using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Logging;
using Quartz;
using StudioBot.Host.Ticks;

namespace StudioBot.Host.Tests.Ticks;

public sealed class ScheduleTests : IAsyncLifetime
{
    private const int LeftToTheScheduler = 0;

    private static readonly TimeZoneInfo Vienna = TimeZoneInfo.FindSystemTimeZoneById("Europe/Vienna");

    // Still to come, so that no trigger counts as missed.
    private static readonly DateTimeOffset Start = new(2126, 11, 25, 9, 0, 0, TimeSpan.Zero);

    private ServiceProvider services = null!;
    private List<ITrigger> triggers = null!;
    private IScheduler scheduler = null!;

    public async Task InitializeAsync()
    {
        var collection = new ServiceCollection();
        collection.AddSingleton(typeof(ILogger<>), typeof(Microsoft.Extensions.Logging.Abstractions.NullLogger<>));
        collection.AddSingleton<ILoggerFactory, Microsoft.Extensions.Logging.Abstractions.NullLoggerFactory>();
        Schedule.AddTo(collection, Vienna, Start);
        services = collection.BuildServiceProvider();
        scheduler = await services.GetRequiredService<ISchedulerFactory>().GetScheduler();
        triggers = [];
        foreach (var key in await scheduler.GetTriggerKeys(GroupMatcher<TriggerKey>.AnyGroup()))
        {
            triggers.Add((await scheduler.GetTrigger(key))!);
        }
    }

    public async Task DisposeAsync()
    {
        await scheduler.Shutdown();
        await services.DisposeAsync();
    }

    [Fact]
    public void Every_tick_that_there_is_ticks() => Assert.Equal(
        typeof(Schedule).Assembly.GetTypes().Where(type => type.IsAssignableTo(typeof(IJob))).Select(type => type.Name).Order(),
        triggers.Select(trigger => trigger.JobKey).Distinct()
            .Select(key => scheduler.GetJobDetail(key).AsTask().Result!.JobType.Type.Name).Order());

    [Fact]
    public void What_a_missed_tick_does_is_said_for_every_trigger() =>
        Assert.All(triggers, trigger => Assert.NotEqual(LeftToTheScheduler, trigger.MisfireInstructionCode));

    [Fact]
    public void What_goes_by_the_clock_goes_by_the_studio_s()
    {
        var nights = triggers.OfType<ICronTrigger>().ToList();
        Assert.Equal(["backup by night", "forgetting by night"], nights.Select(night => night.Key.Name).Order());
        Assert.All(nights, night => Assert.Equal(Vienna, night.TimeZone));
    }

    [Theory]
    [InlineData("backup by night")]
    [InlineData("forgetting by night")]
    public void A_night_s_tick_comes_once_every_night_of_a_year_whatever_the_clocks_do(string name)
    {
        var night = Assert.Single(triggers.OfType<ICronTrigger>(), trigger => trigger.Key.Name == name);
        var at = night.GetFireTimeAfter(night.StartTimeUtc)!.Value;
        for (var nights = 0; nights < 366; nights++)
        {
            var next = night.GetFireTimeAfter(at)!.Value;
            Assert.Equal(DateIn(at).AddDays(1), DateIn(next));
            at = next;
        }
    }

    [Fact]
    public void What_a_night_missed_and_the_shelf_wait_a_minute_after_the_start_until_who_waits_was_answered() => Assert.Equal(
        ["backup at start", "forgetting at start", "stock"],
        triggers.Where(trigger => trigger.StartTimeUtc == Start.AddMinutes(1)).Select(trigger => trigger.Key.Name).Order());

    [Fact]
    public async Task No_job_runs_twice_at_once()
    {
        foreach (var key in triggers.Select(trigger => trigger.JobKey).Distinct())
        {
            var job = await scheduler.GetJobDetail(key);
            Assert.True(job!.ConcurrentExecutionDisallowed, key.ToString());
        }
    }

    [Fact]
    public void What_is_due_is_looked_for_often() => Assert.InRange(
        Assert.Single(triggers.OfType<ISimpleTrigger>(), trigger => trigger.Key.Name == "reminders").RepeatInterval,
        TimeSpan.FromSeconds(1),
        TimeSpan.FromSeconds(5));

    private static DateOnly DateIn(DateTimeOffset at) => DateOnly.FromDateTime(TimeZoneInfo.ConvertTime(at, Vienna).DateTime);
}
