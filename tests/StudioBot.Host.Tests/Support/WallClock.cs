using Microsoft.Extensions.Time.Testing;

namespace StudioBot.Host.Tests.Support;

/// <summary>A clock on the wall that can be set, over a steady one that only goes on.</summary>
internal sealed class WallClock(FakeTimeProvider steady) : TimeProvider
{
    private long ahead;

    public override long TimestampFrequency => steady.TimestampFrequency;

    /// <summary>Sets it, forwards or back; timers and the steady count go on as they were.</summary>
    public void Set(TimeSpan by) => Interlocked.Add(ref ahead, by.Ticks);

    public override DateTimeOffset GetUtcNow() => steady.GetUtcNow().AddTicks(Interlocked.Read(ref ahead));

    public override long GetTimestamp() => steady.GetTimestamp();

    public override ITimer CreateTimer(TimerCallback callback, object? state, TimeSpan dueTime, TimeSpan period) =>
        steady.CreateTimer(callback, state, dueTime, period);
}
