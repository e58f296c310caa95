using Microsoft.Extensions.DependencyInjection;
using Quartz;

namespace StudioBot.Host.Ticks;

/// <summary>When what ticks. The triggers live in memory and only tick: what is due stands in the studio's table, and
/// each tick looks there.</summary>
internal static class Schedule
{
    /// <summary>How often is looked for what is due.</summary>
    public static readonly TimeSpan Often = TimeSpan.FromSeconds(2);

    /// <summary>How often is looked at the wall: its changes share what the service takes of one chat.</summary>
    public static readonly TimeSpan EveryFewSeconds = TimeSpan.FromSeconds(5);

    /// <summary>How often is looked over the shelf.</summary>
    public static readonly TimeSpan Hourly = TimeSpan.FromHours(1);

    /// <summary>How often the log beside the file is looked at.</summary>
    public static readonly TimeSpan EveryHalfMinute = TimeSpan.FromSeconds(30);

    // Who waits is answered first; what a night missed, and the shelf, have a minute's time.
    private static readonly TimeSpan UntilMadeUp = TimeSpan.FromMinutes(1);

    // At night, when nobody waits: twenty to four misses both clock changes of every zone that changes at two or three.
    private const string EveryNight = "0 40 3 * * ?";

    // An hour later than that: what was settled long ago is gone from the copy by then.
    private const string EveryNightLater = "0 40 4 * * ?";

    /// <summary>Adds the ticks to a service.</summary>
    /// <param name="services">The service.</param>
    /// <param name="zone">The studio's zone, by which the night is counted.</param>
    /// <param name="start">When the service starts.</param>
    public static void AddTo(IServiceCollection services, TimeZoneInfo zone, DateTimeOffset start)
    {
        services.AddQuartz(quartz =>
        {
            quartz.ScheduleJob<ReminderTick>(trigger => trigger
                .WithIdentity("reminders")
                .StartNow()
                .WithSimpleSchedule(often => often
                    .WithInterval(Often)
                    .RepeatForever()
                    .WithMisfireInstruction(SimpleTriggerMisfireInstruction.NextWithRemainingCount)));
            quartz.ScheduleJob<StockTick>(trigger => trigger
                .WithIdentity("stock")
                .StartAt(start + UntilMadeUp)
                .WithSimpleSchedule(hourly => hourly
                    .WithInterval(Hourly)
                    .RepeatForever()
                    .WithMisfireInstruction(SimpleTriggerMisfireInstruction.NextWithRemainingCount)));
            quartz.ScheduleJob<WallTick>(trigger => trigger
                .WithIdentity("wall")
                .StartNow()
                .WithSimpleSchedule(often => often
                    .WithInterval(EveryFewSeconds)
                    .RepeatForever()
                    .WithMisfireInstruction(SimpleTriggerMisfireInstruction.NextWithRemainingCount)));
            quartz.ScheduleJob<LogTick>(trigger => trigger
                .WithIdentity("log")
                .StartNow()
                .WithSimpleSchedule(often => often
                    .WithInterval(EveryHalfMinute)
                    .RepeatForever()
                    .WithMisfireInstruction(SimpleTriggerMisfireInstruction.NextWithRemainingCount)));
            AtStartAndByNight<NightlyTick>(quartz, "forgetting", EveryNight, zone, start);
            AtStartAndByNight<BackupTick>(quartz, "backup", EveryNightLater, zone, start);
        });
        services.AddQuartzHostedService(hosted => hosted.WaitForJobsToComplete = true);
    }

    private static void AtStartAndByNight<T>(
        IQuartzBuilder quartz, string name, string night, TimeZoneInfo zone, DateTimeOffset start)
        where T : IJob
    {
        var key = new JobKey(name);
        quartz.AddJob<T>(job => job.WithIdentity(key));
        quartz.AddTrigger(trigger => trigger
            .ForJob(key)
            .WithIdentity($"{name} at start")
            .StartAt(start + UntilMadeUp)
            .WithSimpleSchedule(once => once
                .WithRepeatCount(0)
                .WithMisfireInstruction(SimpleTriggerMisfireInstruction.FireNow)));
        quartz.AddTrigger(trigger => trigger
            .ForJob(key)
            .WithIdentity($"{name} by night")
            .WithCronSchedule(night, every => every
                .InTimeZone(zone)
                .WithMisfireInstruction(CronTriggerMisfireInstruction.FireAndProceed)));
    }
}
