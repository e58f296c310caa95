using StudioBot.Craft.Units;

namespace StudioBot.Craft.Mixing;

/// <summary>The density of a mixture.</summary>
public static class MixDensity
{
    /// <summary>ρ = Σm/Σ(m/ρ): volumes add up, which is off by less than 1 % for these liquids (from memory).</summary>
    /// <exception cref="ArgumentException">Nothing was mixed.</exception>
    public static Density Of(IReadOnlyList<WeighedPart> parts)
    {
        var mass = parts.Aggregate(default(Mass), (sum, part) => sum + part.Mass);
        return mass > default(Mass)
            ? mass / parts.Aggregate(default(Volume), (sum, part) => sum + part.Mass / part.Density)
            : throw new ArgumentException("A mixture weighs something.", nameof(parts));
    }
}
