using Microsoft.Extensions.Logging;
using Quartz;
using StudioBot.Host.Health;
using StudioBot.Host.Sending;

namespace StudioBot.Host.Ticks;

/// <summary>Looks for what is due; never two at once.</summary>
[DisallowConcurrentExecution]
internal sealed class ReminderTick(
    DueReminders reminders, Bell outbox, Counts counts, TimeProvider time, ILogger<ReminderTick> log) : IJob
{
    /// <inheritdoc/>
    public ValueTask Execute(IJobExecutionContext context, CancellationToken cancellationToken)
    {
        try
        {
            if (reminders.Say(time.GetUtcNow()) is > 0 and var said)
            {
                counts.Reminded(said);
                outbox.Ring();
            }
        }
        catch (Exception broken)
        {
            // The rows stay as they were: the next tick looks at them again.
            log.LogError(broken, "Looking for what is due broke.");
        }

        return ValueTask.CompletedTask;
    }
}
