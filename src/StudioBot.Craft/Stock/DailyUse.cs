namespace StudioBot.Craft.Stock;

/// <summary>How much of a material a day takes, in the material's own unit (mL, g or pieces).</summary>
/// <param name="PerDay">The mean over all days, those without use included; zero or more.</param>
/// <param name="Deviation">The daily standard deviation, over all days likewise; zero or more.</param>
/// <param name="IsLittleData">Fewer than 5 uses: the deviation is a guess.</param>
public sealed record DailyUse(double PerDay, double Deviation, bool IsLittleData = false)
{
    private const int LongestDays = 26 * 7;
    private const int LittleDataDays = 60;
    private const int FewestUses = 5;
    private const double GuessedDeviation = 1.5;

    // As where one day in five has all the use, in equal parts (common practice).
    private const double LumpyVariation = 2;

    /// <summary>It comes in lumps: few days have much of it, and most have none.</summary>
    public bool IsLumpy => !IsLittleData && Deviation > LumpyVariation * PerDay;

    /// <summary>
    /// From the use of every day, the oldest first, days without use as zero; the last 26 weeks count.
    /// </summary>
    /// <remarks>
    /// Fewer than 5 uses: the mean of the last 60 days, and 1.5 times it for the deviation (common practice). Booked
    /// amounts
    /// (a workshop) are known demand and do not belong in here.
    /// </remarks>
    /// <exception cref="ArgumentException">No day at all, or one below zero.</exception>
    public static DailyUse From(IReadOnlyList<double> days)
    {
        if (days.Count == 0 || days.Any(use => !double.IsFinite(use) || use < 0))
        {
            throw new ArgumentException("At least one day, each with a use of zero or more.", nameof(days));
        }

        double[] last = [.. days.TakeLast(LongestDays)];
        if (last.Count(use => use > 0) < FewestUses)
        {
            var recent = days.TakeLast(LittleDataDays).Average();
            return new DailyUse(recent, GuessedDeviation * recent, IsLittleData: true);
        }

        var mean = last.Average();
        return new DailyUse(mean, Math.Sqrt(last.Sum(use => (use - mean) * (use - mean)) / (last.Length - 1)));
    }
}
