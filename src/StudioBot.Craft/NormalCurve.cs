namespace StudioBot.Craft;

/// <summary>The standard normal distribution: share below a point, and the point below which a share lies.</summary>
internal static class NormalCurve
{
    /// <summary>The share below <paramref name="z"/>.</summary>
    /// <remarks>
    /// Hart's rational form as given by West (from memory), good to about 1e-15 absolute.
    /// </remarks>
    public static double Below(double z)
    {
        var x = Math.Abs(z);
        var tail = x > 37 ? 0 : x < 7.07106781186547 ? Inner(x) : Outer(x);
        return z > 0 ? 1 - tail : tail;
    }

    /// <summary>The point below which this share lies; the share strictly between 0 and 1.</summary>
    /// <remarks>
    /// Acklam's rational start (from memory) and two Halley steps on <see cref="Below"/>: 1e-12 or better.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">Not strictly between 0 and 1.</exception>
    public static double Quantile(double share)
    {
        if (share is not (> 0 and < 1))
        {
            throw new ArgumentOutOfRangeException(nameof(share), share, "A share lies strictly between 0 and 1.");
        }

        if (share > 0.5)
        {
            return -Quantile(1 - share);
        }

        var z = Start(share);
        for (var step = 0; step < 2; step++)
        {
            var slip = (Below(z) - share) * Math.Sqrt(2 * Math.PI) * Math.Exp(z * z / 2);
            z -= slip / (1 + z * slip / 2);
        }

        return z;
    }

    private static double Inner(double x)
    {
        var above = ((((((3.52624965998911e-02 * x + 0.700383064443688) * x + 6.37396220353165) * x
            + 33.912866078383) * x + 112.079291497871) * x + 221.213596169931) * x) + 220.206867912376;
        var below = (((((((8.83883476483184e-02 * x + 1.75566716318264) * x + 16.064177579207) * x
            + 86.7807322029461) * x + 296.564248779674) * x + 637.333633378831) * x
            + 793.826512519948) * x) + 440.413735824752;
        return Math.Exp(-x * x / 2) * above / below;
    }

    private static double Outer(double x) =>
        Math.Exp(-x * x / 2) / (x + 1 / (x + 2 / (x + 3 / (x + 4 / (x + 0.65))))) / 2.506628274631;

    private static double Start(double share)
    {
        if (share < 0.02425)
        {
            var q = Math.Sqrt(-2 * Math.Log(share));
            return (((((-7.784894002430293e-03 * q - 3.223964580411365e-01) * q - 2.400758277161838) * q
                - 2.549732539343734) * q + 4.374664141464968) * q + 2.938163982698783)
                / ((((7.784695709041462e-03 * q + 3.224671290700398e-01) * q + 2.445134137142996) * q
                + 3.754408661907416) * q + 1);
        }

        var d = share - 0.5;
        var r = d * d;
        return (((((-3.969683028665376e+01 * r + 2.209460984245205e+02) * r - 2.759285104469687e+02) * r
            + 1.383577518672690e+02) * r - 3.066479806614716e+01) * r + 2.506628277459239) * d
            / (((((-5.447609879822406e+01 * r + 1.615858368580409e+02) * r - 1.556989798598866e+02) * r
            + 6.680131188771972e+01) * r - 1.328068155288572e+01) * r + 1);
    }
}
