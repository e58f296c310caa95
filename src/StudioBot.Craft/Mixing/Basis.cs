using StudioBot.Craft.Units;

namespace StudioBot.Craft.Mixing;

/// <summary>Turns a ratio by volume into the same mixture by mass, and back: m = ρ·V.</summary>
public static class Basis
{
    /// <summary>2:1 by volume of 1.13 and 0.97 g/mL is 100:42.9 by mass, not 100:50.</summary>
    /// <param name="ratio">By either; one by mass comes back as it is.</param>
    /// <param name="densities">Of each part, in order; above zero.</param>
    /// <exception cref="ArgumentException">Not as many densities as parts, or one of zero.</exception>
    public static MixRatio ByMass(MixRatio ratio, IReadOnlyList<Density> densities) => ratio.By == RatioBy.Mass
        ? ratio
        : Turned(ratio, densities, RatioBy.Mass, (part, density) => part * density);

    /// <summary>The way back.</summary>
    /// <param name="ratio">By either; one by volume comes back as it is.</param>
    /// <param name="densities">Of each part, in order; above zero.</param>
    /// <exception cref="ArgumentException">Not as many densities as parts, or one of zero.</exception>
    public static MixRatio ByVolume(MixRatio ratio, IReadOnlyList<Density> densities) => ratio.By == RatioBy.Volume
        ? ratio
        : Turned(ratio, densities, RatioBy.Volume, (part, density) => part / density);

    private static MixRatio Turned(
        MixRatio ratio, IReadOnlyList<Density> densities, RatioBy by, Func<double, double, double> turn) =>
        densities.Count == ratio.Parts.Count
            ? new MixRatio(
                [.. ratio.Parts.Zip(densities, (part, density) => turn(part, density.GramsPerMillilitre))], by)
            : throw new ArgumentException("A density for each part of the ratio.", nameof(densities));
}
