namespace StudioBot.Craft.Pours;

/// <summary>The normal distribution where it is small.</summary>
internal static class NormalTail
{
    // Chebyshev fit of the complementary error function in t = 1/(1 + x/2): relative error below 1.2e-7 for every
    // x ≥ 0 (numerical textbooks, from memory); highest power first.
    private static readonly double[] Fit =
    [
        0.17087277, -0.82215223, 1.48851587, -1.13520398, 0.27886807,
        -0.18628806, 0.09678418, 0.37409196, 1.00002368, -1.26551223,
    ];

    /// <summary>ln Φ(z), finite far into the tail, where Φ itself would be zero.</summary>
    public static double LogBelow(double z)
    {
        var x = Math.Abs(z) / Math.Sqrt(2);
        var t = 1 / (1 + x / 2);
        var polynomial = Fit.Aggregate(0.0, (sum, coefficient) => sum * t + coefficient);
        var logTail = Math.Log(t / 2) - x * x + polynomial;
        return z <= 0 ? logTail : Math.Log(1 - Math.Exp(logTail));
    }
}
