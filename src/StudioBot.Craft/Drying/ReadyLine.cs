using StudioBot.Craft.Units;

namespace StudioBot.Craft.Drying;

/// <summary>How little water may be left for resin.</summary>
public static class ReadyLine
{
    /// <summary>The share of the water that may be left (common practice).</summary>
    public const double ShareOfWater = 0.01;

    /// <summary>The mass that may still be lost: 1 % of the water, whatever the scale.</summary>
    public static Mass Of(Mass water) => water * ShareOfWater;

    /// <summary>What a scale still sees go from the line on: as much slow solvent as water.</summary>
    public static Mass Seen(Mass water) => water * (2 * ShareOfWater);

    /// <summary>Whether a scale this rough can see the line; a rough scale never makes a piece dry sooner.</summary>
    public static bool IsSeenBy(Mass deviation, Mass water) => 2 * deviation <= Of(water);

    /// <summary>The time until only <paramref name="residual"/> is left: τ·ln(Δ/R); zero when it already is.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The residual is zero: that is never.</exception>
    public static TimeSpan TimeTo(Mass residual, Mass loss, TimeSpan tau) => residual.Grams > 0
        ? loss <= residual ? TimeSpan.Zero : tau * Math.Log(loss / residual)
        : throw new ArgumentOutOfRangeException(nameof(residual), "Nothing at all is left only after for ever.");
}
