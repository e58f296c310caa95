namespace StudioBot.Craft.Stock;

/// <summary>How long an order takes to come.</summary>
/// <param name="Days">The mean, zero or more; 7 unless known (common practice).</param>
/// <param name="Deviation">Its standard deviation in days; zero when it always takes the same.</param>
public readonly record struct LeadTime(double Days, double Deviation = 0)
{
    /// <summary>A week (common practice).</summary>
    public static LeadTime Usual { get; } = new(7);
}
