using Microsoft.Extensions.DependencyInjection;
using Quartz;

namespace StudioBot.Host.Ticks;

/// <summary>When what ticks. The triggers live in memory and only tick: what is due stands in the studio's table, and
/// each tick looks there.</summary>
internal static class Schedule
{
    /// <summary>How often is looked for what is due.</summary>
    public static readonly TimeSpan Often = TimeSpan.FromSeconds(2);

    /// <summary>How often is looked over the shelf.</summary>
    public static readonly TimeSpan Hourly = TimeSpan.FromHours(1);

    // At night, when nobody waits: twenty to four misses both clock changes of every zone that changes at two or three.
    private const string EveryNight = "0 40 3 * * ?";

    /// <summary>Adds the ticks to a service.</summary>
    /// <param name="services">The service.</param>
    /// <param name="zone">The studio's zone, by which the night is counted.</param>
    public static void AddTo(IServiceCollection services, TimeZoneInfo zone)
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
                .StartNow()
                .WithSimpleSchedule(hourly => hourly
                    .WithInterval(Hourly)
                    .RepeatForever()
                    .WithMisfireInstruction(SimpleTriggerMisfireInstruction.NextWithRemainingCount)));
            var nightly = new JobKey("nightly");
            quartz.AddJob<NightlyTick>(job => job.WithIdentity(nightly));
            quartz.AddTrigger(trigger => trigger
                .ForJob(nightly)
                .WithIdentity("start")
                .StartNow()
                .WithSimpleSchedule(once => once
                    .WithRepeatCount(0)
                    .WithMisfireInstruction(SimpleTriggerMisfireInstruction.FireNow)));
            quartz.AddTrigger(trigger => trigger
                .ForJob(nightly)
                .WithIdentity("night")
                .WithCronSchedule(EveryNight, night => night
                    .InTimeZone(zone)
                    .WithMisfireInstruction(CronTriggerMisfireInstruction.FireAndProceed)));
        });
        services.AddQuartzHostedService(hosted => hosted.WaitForJobsToComplete = true);
    }
}
