namespace StudioBot.Host.Health;

/// <summary>Whether the service is alive: it is as long as it hears from the chat service.</summary>
internal sealed class Pulse(TimeProvider time)
{
    private static readonly TimeSpan LongestSilence = TimeSpan.FromMinutes(5);

    private readonly DateTimeOffset born = time.GetUtcNow();
    private long lastPollTicks;

    /// <summary>When the chat service last answered a poll; the start where it never did.</summary>
    public DateTimeOffset LastPoll =>
        Interlocked.Read(ref lastPollTicks) is > 0 and var ticks ? new DateTimeOffset(ticks, TimeSpan.Zero) : born;

    /// <summary>Whether it ever answered a poll.</summary>
    public bool WasHeard => Interlocked.Read(ref lastPollTicks) > 0;

    /// <summary>Whether it was heard of within five minutes.</summary>
    public bool IsAlive => time.GetUtcNow() - LastPoll <= LongestSilence;

    /// <summary>A poll was answered.</summary>
    public void Polled() => Interlocked.Exchange(ref lastPollTicks, time.GetUtcNow().UtcTicks);
}
