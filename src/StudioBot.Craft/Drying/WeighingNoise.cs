using StudioBot.Craft.Units;

namespace StudioBot.Craft.Drying;

/// <summary>How far one weighing is off (one standard deviation).</summary>
public static class WeighingNoise
{
    /// <summary>How much of the dry paint's mass moves with the air's humidity (common practice).</summary>
    private const double PaintBreathes = 0.0005;

    /// <summary>How much of a wooden panel's mass moves with the air's humidity (common practice).</summary>
    private const double WoodBreathes = 0.0003;

    /// <summary>Scale, paint and wood in quadrature.</summary>
    /// <param name="division">One division of the scale, above zero.</param>
    /// <param name="dryPaint">The paint's mass when dry; nothing when unknown.</param>
    /// <param name="wood">The panel's mass when it is wood; else nothing.</param>
    /// <param name="scale">The scale's own standard deviation, at least half a division; unknown: one division.</param>
    /// <exception cref="ArgumentOutOfRangeException">The division is zero.</exception>
    public static Mass Of(Mass division, Mass dryPaint = default, Mass wood = default, Mass? scale = null)
    {
        if (division.Grams <= 0)
        {
            throw new ArgumentOutOfRangeException(nameof(division), "A scale's division is above zero.");
        }

        var own = Math.Max(scale?.Grams ?? division.Grams, division.Grams / 2);
        return Mass.FromGrams(Math.Sqrt(
            own * own + Math.Pow(PaintBreathes * dryPaint.Grams, 2) + Math.Pow(WoodBreathes * wood.Grams, 2)));
    }
}
