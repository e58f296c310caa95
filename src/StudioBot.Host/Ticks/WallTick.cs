using Quartz;
using StudioBot.Host.Health;
using StudioBot.Host.Sending;

namespace StudioBot.Host.Ticks;

/// <summary>Looks whether the wall says what is true, unless the clock can't be right; never two at once.</summary>
[DisallowConcurrentExecution]
internal sealed class WallTick(
    WallKeeper wall, ClockCheck clock, Bell outbox, TickRuns runs, TimeProvider time) : IJob
{
    /// <inheritdoc/>
    public async ValueTask Execute(IJobExecutionContext context, CancellationToken cancellationToken) =>
        await runs.Run("Looking at the wall", Look, cancellationToken);

    private void Look()
    {
        if (clock.IsRight() && wall.Look(time.GetUtcNow()))
        {
            outbox.Ring();
        }
    }
}
