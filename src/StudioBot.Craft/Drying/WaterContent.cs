using StudioBot.Craft.Units;

namespace StudioBot.Craft.Drying;

/// <summary>How much water a wet mix or film holds; the mass balance on ISO 3251's non-volatile matter.</summary>
public static class WaterContent
{
    /// <summary>What a millilitre of wet film is taken to hold when the mix is unknown (common practice).</summary>
    public static Density OfUnknownFilm { get; } = Density.FromGramsPerMillilitre(0.6);

    /// <summary>The water: Σ m·(1 − NV).</summary>
    public static Mass Of(IReadOnlyList<WetPart> parts) =>
        Mass.FromGrams(parts.Sum(part => part.Mass.Grams * (1 - part.NonVolatile)));

    /// <summary>The water in a film whose mix is unknown.</summary>
    public static Mass OfFilm(Volume film) => film * OfUnknownFilm;

    /// <summary>The whole mix's non-volatile share by mass, 0 to 1.</summary>
    /// <exception cref="ArgumentException">The parts weigh nothing.</exception>
    public static double NonVolatile(IReadOnlyList<WetPart> parts)
    {
        var whole = parts.Sum(part => part.Mass.Grams);
        return whole > 0
            ? parts.Sum(part => part.Mass.Grams * part.NonVolatile) / whole
            : throw new ArgumentException("A mix weighs something.", nameof(parts));
    }
}
