using Quartz;
using StudioBot.Host.Health;
using StudioBot.Host.Sending;

namespace StudioBot.Host.Ticks;

/// <summary>Looks for what is due, unless the clock can't be right; never two at once.</summary>
[DisallowConcurrentExecution]
internal sealed class ReminderTick(
    DueReminders reminders, ClockCheck clock, Bell outbox, Counts counts, TickRuns runs, TimeProvider time) : IJob
{
    /// <inheritdoc/>
    public async ValueTask Execute(IJobExecutionContext context, CancellationToken cancellationToken) =>
        await runs.Run("Looking for what is due", Look, cancellationToken);

    /// <summary>One look.</summary>
    public void Look()
    {
        if (clock.IsRight() && reminders.Say(time.GetUtcNow()) is > 0 and var said)
        {
            counts.Reminded(said);
            outbox.Ring();
        }
    }
}
