using Microsoft.Extensions.Logging;
using Quartz;

namespace StudioBot.Host.Ticks;

/// <summary>Has what was settled long ago forgotten; never two at once.</summary>
[DisallowConcurrentExecution]
internal sealed class NightlyTick(Nightly nightly, TimeProvider time, ILogger<NightlyTick> log) : IJob
{
    /// <inheritdoc/>
    public ValueTask Execute(IJobExecutionContext context, CancellationToken cancellationToken)
    {
        try
        {
            nightly.Forget(time.GetUtcNow());
        }
        catch (Exception broken)
        {
            log.LogError(broken, "Forgetting what was settled broke; it is tried again the next night.");
        }

        return ValueTask.CompletedTask;
    }
}
