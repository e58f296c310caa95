namespace StudioBot.Craft.Flow;

/// <summary>How strongly a liquid thins: the change of ln(reading) from a share of nothing to nothing else.</summary>
/// <remarks>By log-linear mixing it is ln(ν of the thinner/ν of the mixture): near −5 for water in a paint of
/// 150 mm²/s, about half of it for a varnish. So −5 is taken, give or take half of it (common practice).</remarks>
/// <param name="Mean">What is expected; below zero, as a thinner thins.</param>
/// <param name="Deviation">How sure that is, as a standard deviation.</param>
public sealed record ThinningSlope(double Mean, double Deviation)
{
    /// <summary>Of any varnish, water or flow extender (common practice).</summary>
    public static ThinningSlope Usual { get; } = new(-5, 2.5);

    /// <summary>What one part in a hundred more takes off a reading, as a fraction.</summary>
    public double PerHundredth => 1 - Math.Exp(Mean / 100);
}
