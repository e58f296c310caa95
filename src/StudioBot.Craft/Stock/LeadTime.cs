namespace StudioBot.Craft.Stock;

/// <summary>How long an order takes to come.</summary>
/// <param name="Days">The mean, zero or more; 7 unless known (common practice).</param>
/// <param name="Deviation">Its standard deviation in days; zero when it always takes the same.</param>
public readonly record struct LeadTime(double Days, double Deviation = 0)
{
    // What is believed is worth two deliveries; its spread, a quarter of it, is worth four (common practice).
    private const double Weight = 2;
    private const double WeightOfSpread = 4;
    private const double UsualSpread = 0.25;

    // Beyond five times what is believed an order went astray, or nobody wrote that it came (common practice).
    private const double Astray = 5;

    /// <summary>A week (common practice).</summary>
    public static LeadTime Usual { get; } = new(7);

    // What is written down and bought within half a day was fetched, or written late (common practice).
    private const double Fetched = 0.5;

    /// <summary>So many deliveries make it the studio's own.</summary>
    public const int EnoughDeliveries = 2;

    /// <summary>Whether so many days can be how long an order took: half a day or more.</summary>
    public bool Fits(double days) => days >= Fetched && days <= Astray * Math.Max(Days, 1);

    /// <summary>This, after what the own orders took.</summary>
    /// <remarks>Normal–inverse-gamma: mean (M·L₀ + Σx)/(M + n), σ² = (ν₀σ₀² + SS + M·n/(M + n)·(x̄ − L₀)²)/(ν₀ + n),
    /// the next delivery's σ·√(1 + 1/(M + n)) (from memory).</remarks>
    /// <param name="days">What each order took, in days; those that do not fit are left out.</param>
    /// <returns>This itself with fewer than two that fit.</returns>
    public LeadTime After(IReadOnlyList<double> days)
    {
        double[] took = [.. days.Where(Fits)];
        if (took.Length < EnoughDeliveries)
        {
            return this;
        }

        var (n, mean) = (took.Length, took.Average());
        var believed = Days;
        var spread = UsualSpread * Math.Max(believed, 1);
        var squares = took.Sum(one => (one - mean) * (one - mean))
            + Weight * n / (Weight + n) * (mean - believed) * (mean - believed);
        var variance = (WeightOfSpread * spread * spread + squares) / (WeightOfSpread + n);
        return new LeadTime(
            (Weight * believed + took.Sum()) / (Weight + n), Math.Sqrt(variance * (1 + 1 / (Weight + n))));
    }
}
