using StudioBot.Craft.Units;

namespace StudioBot.Craft.Mixing;

/// <summary>How much powder a medium takes.</summary>
public static class Pigment
{
    /// <summary>From here a film turns matt and weak and cracks; the critical value lies at 0.45–0.60 (from
    /// memory).</summary>
    public const double CautionAbove = 0.40;

    /// <summary>The mass of powder for so much medium.</summary>
    /// <param name="loading">Grams of powder to a millilitre of medium. Common practice: mica alone 0.05–0.12, as a
    /// shimmer in a paint 0.01–0.05, titanium white 0.05–0.20.</param>
    /// <param name="medium">What it is stirred into.</param>
    public static Mass For(Density loading, Volume medium) => medium * loading;

    /// <summary>Pigment volume concentration of the dry film, 0 to 1: V_p/(V_p + V_b), V_b = m·NV/ρ_polymer.</summary>
    /// <param name="pigment">The powder.</param>
    /// <param name="medium">The medium as poured; its density is the dry polymer's, about 1.15 g/mL (from
    /// memory).</param>
    /// <param name="nonVolatile">The medium's non-volatile share by mass, 0 to 1 (ISO 3251).</param>
    /// <returns>Undetermined where neither leaves anything dry.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The share is outside 0 to 1.</exception>
    public static Finding<double> VolumeConcentration(WeighedPart pigment, WeighedPart medium, double nonVolatile)
    {
        Shares.Demand(nonVolatile, nameof(nonVolatile));
        var powder = pigment.Mass / pigment.Density;
        var dry = powder + medium.Mass * nonVolatile / medium.Density;
        if (dry <= default(Volume))
        {
            return new Finding<double>.None(
                NoFigure.Undetermined, "nothing of this mixture is left when dry", "Name the powder and the medium.");
        }

        var concentration = powder / dry;
        return concentration > CautionAbove
            ? new Finding<double>.Cautioned(concentration, "that much powder dries matt and weak and may crack")
            : new Finding<double>.Found(concentration);
    }
}
