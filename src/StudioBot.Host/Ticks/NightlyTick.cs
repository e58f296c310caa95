using Quartz;

namespace StudioBot.Host.Ticks;

/// <summary>Has what was settled long ago forgotten; never two at once.</summary>
[DisallowConcurrentExecution]
internal sealed class NightlyTick(Nightly nightly, TickRuns runs, TimeProvider time) : IJob
{
    /// <inheritdoc/>
    public async ValueTask Execute(IJobExecutionContext context, CancellationToken cancellationToken) =>
        await runs.Run("Forgetting what was settled", () => nightly.Forget(time.GetUtcNow()), cancellationToken);
}
