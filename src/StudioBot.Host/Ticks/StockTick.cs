using Quartz;
using StudioBot.Chat;
using StudioBot.Chat.Pings;
using StudioBot.Craft.Practice;
using StudioBot.Host.Health;
using StudioBot.Records;

namespace StudioBot.Host.Ticks;

/// <summary>Looks over the shelf for levels that are low, unless the clock can't be right; never two at once.</summary>
[DisallowConcurrentExecution]
internal sealed class StockTick(
    StudioFile file, TradePractice practice, ClockCheck clock, TickRuns runs, TimeProvider time) : IJob
{
    /// <inheritdoc/>
    public async ValueTask Execute(IJobExecutionContext context, CancellationToken cancellationToken) =>
        await runs.Run("Looking over the shelf", Look, cancellationToken);

    private void Look()
    {
        if (clock.IsRight())
        {
            var now = time.GetUtcNow();
            file.Write(session => StockWatch.Look(session, new Studio(session, practice, isSample: false), now));
        }
    }
}
