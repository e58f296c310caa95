namespace StudioBot.Craft.Costs;

/// <summary>What a piece cost to make.</summary>
/// <param name="Materials">At stock cost, run-off and cup waste included.</param>
/// <param name="Labour">Hands on it; waiting is not labour. Zero or more.</param>
/// <param name="RatePerHour">What an hour of work is worth.</param>
/// <param name="OverheadPerHour">Of the studio, for each hour of work.</param>
/// <param name="OverheadPerPiece">Of the studio, for each piece.</param>
public sealed record PieceCost(
    Money Materials,
    TimeSpan Labour,
    Money RatePerHour,
    Money OverheadPerHour = default,
    Money OverheadPerPiece = default)
{
    /// <summary>The labour, rounded once to the cent.</summary>
    public Money Work => ByHour(RatePerHour);

    /// <summary>The overhead, rounded once to the cent.</summary>
    public Money Overhead => ByHour(OverheadPerHour) + OverheadPerPiece;

    /// <summary>Materials, work and overhead; the three always make the whole.</summary>
    public Money Total => Materials + Work + Overhead;

    private Money ByHour(Money perHour) => Labour >= TimeSpan.Zero
        ? new Money((long)decimal.Round(
            (decimal)Labour.Ticks * perHour.Cents / TimeSpan.TicksPerHour, MidpointRounding.AwayFromZero))
        : throw new InvalidOperationException("Labour is zero or more.");
}
