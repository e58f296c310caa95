using Quartz;
using StudioBot.Records;

namespace StudioBot.Host.Ticks;

/// <summary>Keeps the log beside the studio's file short; never two at once.</summary>
[DisallowConcurrentExecution]
internal sealed class LogTick(StudioFile file, TickRuns runs) : IJob
{
    /// <inheritdoc/>
    public async ValueTask Execute(IJobExecutionContext context, CancellationToken cancellationToken) =>
        await runs.Run("Shortening the log", () => file.ShortenLog(), cancellationToken);
}
