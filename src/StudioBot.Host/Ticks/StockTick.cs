using Microsoft.Extensions.Logging;
using Quartz;
using StudioBot.Chat;
using StudioBot.Chat.Pings;
using StudioBot.Craft.Practice;
using StudioBot.Records;

namespace StudioBot.Host.Ticks;

/// <summary>Looks over the shelf for levels that are low; never two at once.</summary>
[DisallowConcurrentExecution]
internal sealed class StockTick(
    StudioFile file, TradePractice practice, TimeProvider time, ILogger<StockTick> log) : IJob
{
    /// <inheritdoc/>
    public ValueTask Execute(IJobExecutionContext context, CancellationToken cancellationToken)
    {
        try
        {
            var now = time.GetUtcNow();
            file.Write(session => StockWatch.Look(session, new Studio(session, practice, isSample: false), now));
        }
        catch (Exception broken)
        {
            log.LogError(broken, "Looking over the shelf broke; it is tried again within the hour.");
        }

        return ValueTask.CompletedTask;
    }
}
