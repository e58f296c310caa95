namespace StudioBot.Host.Sending;

/// <summary>How long to wait before the next try: 1, 2, 4 … 300 s, each up to a quarter longer by chance.</summary>
internal sealed class Backoff(Random chance)
{
    private const double LongestSeconds = 300;
    private const double Jitter = 0.25;

    /// <summary>The wait after this many tries in a row that did not help; 1 is the first.</summary>
    public TimeSpan After(int tries)
    {
        var seconds = Math.Min(Math.Pow(2, Math.Max(tries, 1) - 1), LongestSeconds);
        return TimeSpan.FromSeconds(Math.Min(seconds * (1 + (Jitter * chance.NextDouble())), LongestSeconds));
    }
}
