namespace StudioBot.Host.Health;

/// <summary>By how much the clock on the wall was set, told from the machine's steady count of time.</summary>
internal sealed class ClockJumps(TimeProvider time)
{
    // Less than this is the clock being kept right.
    private static readonly TimeSpan Least = TimeSpan.FromSeconds(1);

    private long steady = time.GetTimestamp();
    private DateTimeOffset wall = time.GetUtcNow();

    /// <summary>
    /// By how much since the last look, forwards or (less than zero) back; zero where it only went on. And what it
    /// shows now: whoever goes by that does not meet a jump that nobody has told them of.
    /// </summary>
    public (TimeSpan By, DateTimeOffset Now) Since()
    {
        var before = time.GetUtcNow();
        var count = time.GetTimestamp();
        var now = time.GetUtcNow();
        var jump = now - wall - time.GetElapsedTime(steady, count);

        // Held up between the readings: the next look tells.
        if (jump.Duration() < Least || (now - before).Duration() >= Least / 2)
        {
            return (TimeSpan.Zero, now);
        }

        (steady, wall) = (count, now);
        return (jump, now);
    }
}
