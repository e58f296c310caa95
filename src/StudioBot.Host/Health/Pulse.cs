namespace StudioBot.Host.Health;

/// <summary>Whether the service is alive: it is as long as it hears from the chat service.</summary>
/// <remarks>Counted by the machine's steady clock, which nobody sets.</remarks>
internal sealed class Pulse(TimeProvider time)
{
    private static readonly TimeSpan LongestSilence = TimeSpan.FromMinutes(5);

    private long lastPoll = time.GetTimestamp();
    private volatile bool wasHeard;

    /// <summary>When the chat service last answered a poll, or our greeting; the start where it never did.</summary>
    public DateTimeOffset LastPoll => time.GetUtcNow() - Silence;

    /// <summary>Whether it ever answered.</summary>
    public bool WasHeard => wasHeard;

    /// <summary>Whether it was heard of within five minutes.</summary>
    public bool IsAlive => Silence <= LongestSilence;

    private TimeSpan Silence => time.GetElapsedTime(Interlocked.Read(ref lastPoll));

    /// <summary>A poll was answered, or our greeting at the start.</summary>
    public void Polled()
    {
        Interlocked.Exchange(ref lastPoll, time.GetTimestamp());
        wasHeard = true;
    }
}
