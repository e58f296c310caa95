namespace StudioBot.Craft.Stock;

/// <summary>How long what is left may last: as days are uneven, and the mean of a few weeks is no more than that.
/// </summary>
/// <param name="Earliest">Once in ten times it is gone by then.</param>
/// <param name="Latest">Once in ten times it lasts longer; none where the days looked at are too few or too uneven to
/// say.</param>
public sealed record CoverSpan(TimeSpan Earliest, TimeSpan? Latest)
{
    // Both ends together leave out one time in five.
    private const double Share = 0.9;
    private const double LongestDays = 36500;

    /// <summary>The 80 % interval around level over daily use.</summary>
    /// <remarks>
    /// In t days to come a use of d·t is expected; from a mean of n days it misses by σ·√(t + t²/n), the deviation of a
    /// sum of new days and of the mean itself (prediction interval of the normal law, textbooks of statistics, from
    /// memory). The ends are the two t at which d·t ± z·σ·√(t + t²/n) is the level. Use in lumps is skewed, so that
    /// the earliest end is the rougher one.
    /// </remarks>
    /// <param name="level">What may be used, in the material's own unit; zero or more.</param>
    /// <param name="use">What a day takes; above zero.</param>
    /// <param name="days">How many days that mean rests on; at least one.</param>
    /// <exception cref="ArgumentOutOfRangeException">The level is below zero, nothing is used, or no day was looked
    /// at.</exception>
    public static CoverSpan Of(double level, DailyUse use, int days)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(level);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(use.PerDay);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(days);
        var spread = Math.Pow(ServiceLevel.FromShare(Share).Deviations * use.Deviation, 2);

        // (level - d·t)² = spread·(t + t²/n), as a·t² - b·t + level² = 0.
        double a = use.PerDay * use.PerDay - spread / days, b = 2 * level * use.PerDay + spread;
        var root = b + Math.Sqrt(Math.Max(b * b - 4 * a * level * level, 0));
        var earliest = root > 0 ? 2 * level * level / root : 0;
        double? latest = a > 0 && root / (2 * a) <= LongestDays ? root / (2 * a) : null;
        return new CoverSpan(TimeSpan.FromDays(Math.Min(earliest, LongestDays)), Days(latest));
    }

    private static TimeSpan? Days(double? days) => days is { } known ? TimeSpan.FromDays(known) : null;
}
