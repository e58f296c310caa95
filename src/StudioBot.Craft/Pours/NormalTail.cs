namespace StudioBot.Craft.Pours;

/// <summary>
/// The logarithm of the normal distribution, also where the distribution itself is too small to write.
/// </summary>
internal static class NormalTail
{
    // Beyond this the first terms of the asymptotic series are good to 4e-6.
    private const double Far = -30;

    /// <summary>ln Φ(z), finite for every z.</summary>
    /// <remarks>In the far tail ln Φ(z) ≈ −z²/2 − ln(−z·√(2π)) + ln(1 − 1/z²) (from memory).</remarks>
    public static double LogBelow(double z) => z > Far
        ? Math.Log(NormalCurve.Below(z))
        : -z * z / 2 - Math.Log(-z * Math.Sqrt(2 * Math.PI)) + Math.Log(1 - 1 / (z * z));
}
