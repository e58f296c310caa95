using StudioBot.Craft.Units;

namespace StudioBot.Craft.Drying;

/// <summary>What a piece will weigh when dry, worked out from its bare panel.</summary>
/// <param name="Expected">Panel and dry paint.</param>
/// <param name="Deviation">How far that may be off: 5 % of the water, which ±0.03 of non-volatile matter makes.</param>
public sealed record DryMass(Mass Expected, Mass Deviation)
{
    /// <summary>The part of the water that an uncertain non-volatile share leaves open (common practice).</summary>
    public const double OpenShareOfWater = 0.05;

    /// <summary>With the deviation that this much water leaves.</summary>
    public static DryMass Of(Mass expected, Mass water) => new(expected, water * OpenShareOfWater);

    /// <summary>m_panel + (m_wet − m_panel)·NV.</summary>
    /// <param name="bare">The panel before the pour.</param>
    /// <param name="wet">Once the dripping has stopped and the rim is scraped, an hour's loss of water added
    /// back.</param>
    /// <param name="nonVolatile">Of the mix by mass, 0 to 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">Wet weighs less than bare, or the share is outside 0 to
    /// 1.</exception>
    public static DryMass FromBare(Mass bare, Mass wet, double nonVolatile)
    {
        if (nonVolatile is not (>= 0 and <= 1))
        {
            throw new ArgumentOutOfRangeException(nameof(nonVolatile), nonVolatile, "A share is 0 to 1.");
        }

        var paint = Mass.FromGrams(wet.Grams - bare.Grams);
        return Of(bare + paint * nonVolatile, paint * (1 - nonVolatile));
    }
}
