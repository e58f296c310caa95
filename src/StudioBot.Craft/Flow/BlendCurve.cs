namespace StudioBot.Craft.Flow;

/// <summary>A straight line of ln(reading) on the share added, through two readings or fitted to more.</summary>
/// <param name="Intercept">ln of the reading with nothing added.</param>
/// <param name="Slope">Change of ln(reading) from nothing added to nothing else.</param>
/// <param name="Residual">Standard deviation of ln(reading) around the line, never below what a reading is good for.
/// Nothing for two readings.</param>
/// <param name="Shares">The shares it goes through.</param>
internal sealed record BlendCurve(double Intercept, double Slope, double Residual, double[] Shares)
{
    /// <summary>Ordinary least squares; two points give the line through them.</summary>
    public static BlendCurve Through(double[] shares, double[] logs, double leastResidual)
    {
        var (x, y) = (shares.Average(), logs.Average());
        var slope = shares.Zip(logs, (share, log) => (share - x) * (log - y)).Sum() / Squares(shares);
        var intercept = y - slope * x;
        var left = shares.Zip(logs, (share, log) => Math.Pow(log - intercept - slope * share, 2)).Sum();
        var residual = shares.Length > 2
            ? Math.Max(leastResidual, Math.Sqrt(left / (shares.Length - 2)))
            : 0;
        return new BlendCurve(intercept, slope, residual, shares);
    }

    /// <summary>The share at which the line meets this ln(reading).</summary>
    public double ShareAt(double log) => (log - Intercept) / Slope;

    /// <summary>One standard deviation of that share, by the residual.</summary>
    public double SdOf(double share) => Residual / Math.Abs(Slope)
        * Math.Sqrt(1.0 / Shares.Length + Math.Pow(share - Shares.Average(), 2) / Squares(Shares));

    private static double Squares(double[] shares)
    {
        var mean = shares.Average();
        return shares.Sum(share => (share - mean) * (share - mean));
    }
}
