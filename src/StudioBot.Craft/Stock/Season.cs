namespace StudioBot.Craft.Stock;

/// <summary>How the weeks to come differ from the last ones, by the same weeks a year ago.</summary>
/// <remarks>
/// ln r of the two means of a year ago, whose variance is Σ (σ/m)²/n, drawn towards no difference (normal–normal update
/// with a deviation of 0.2: where use swings by a third up and down over the year, five weeks differ from the eight
/// before by 0.19, root mean square, ⅓/√2 · 2π · 46/364): the fewer and the more uneven those days were, the nearer it
/// stays to what is used now.
/// </remarks>
/// <param name="Seen">What a day took in those weeks of last year, over a day of the weeks before; above zero.</param>
/// <param name="Counted">What the use of now is multiplied by, from a half to twice.</param>
public sealed record Season(double Seen, double Counted)
{
    private const double BetweenSeasons = 0.2;
    private const double Most = 2;

    /// <summary>From the use of every day a year ago, days without use as zero.</summary>
    /// <param name="before">Of the weeks that now are over.</param>
    /// <param name="after">Of those that now are to come.</param>
    /// <returns>None where either has fewer than 5 days with use.</returns>
    /// <exception cref="ArgumentException">No day at all, or one below zero.</exception>
    public static Season? Of(IReadOnlyList<double> before, IReadOnlyList<double> after)
    {
        var (then, next) = (DailyUse.From(before), DailyUse.From(after));
        if (then is { IsLittleData: true } || next is { IsLittleData: true })
        {
            return null;
        }

        var seen = next.PerDay / then.PerDay;
        var variance = Variance(then, before.Count) + Variance(next, after.Count);
        const double prior = BetweenSeasons * BetweenSeasons;
        return new Season(
            seen, Math.Clamp(Math.Exp(Math.Log(seen) * prior / (prior + variance)), 1 / Most, Most));
    }

    /// <summary>A use as it is expected of the weeks to come.</summary>
    public DailyUse Over(DailyUse use) =>
        use with { PerDay = use.PerDay * Counted, Deviation = use.Deviation * Counted };

    private static double Variance(DailyUse use, int days) => Math.Pow(use.Deviation / use.PerDay, 2) / days;
}
