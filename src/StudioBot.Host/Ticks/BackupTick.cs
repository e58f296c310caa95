using Microsoft.Extensions.Logging;
using Quartz;
using StudioBot.Host.Logging;
using StudioBot.Host.Sending;

namespace StudioBot.Host.Ticks;

/// <summary>Has the day's backup made: every night, and at the start where one was missed; never two at once.</summary>
[DisallowConcurrentExecution]
internal sealed class BackupTick(BackupRound backups, Bell outbox, TimeProvider time, ILogger<BackupTick> log) : IJob
{
    /// <inheritdoc/>
    public ValueTask Execute(IJobExecutionContext context, CancellationToken cancellationToken)
    {
        try
        {
            if (context.Trigger is ICronTrigger)
            {
                backups.Make(time.GetUtcNow());
            }
            else
            {
                backups.CatchUp(time.GetUtcNow());
            }

            outbox.Ring();
        }
        catch (Exception broken)
        {
            log.LogError(Events.BackupBroke, broken, "The day's backup broke; it is tried again the next night.");
        }

        return ValueTask.CompletedTask;
    }
}
