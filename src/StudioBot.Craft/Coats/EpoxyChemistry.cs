using StudioBot.Craft.Units;

namespace StudioBot.Craft.Coats;

/// <summary>
/// A ratio from chemistry: for understanding and for warnings. For a kit the sheet's ratio rules, and none is ever
/// invented.
/// </summary>
public static class EpoxyChemistry
{
    /// <summary>Parts of hardener to 100 of epoxy by mass: 100·AHEW/EEW (coatings chemistry texts).</summary>
    public static double HardenerPer100(EquivalentWeight hardener, EquivalentWeight epoxy) =>
        100 * hardener.GramsPerEquivalent / epoxy.GramsPerEquivalent;

    /// <summary>The equivalent weight of a mixture: Σm/Σ(m/EEW) (a formulator's worked example).</summary>
    /// <exception cref="ArgumentException">Nothing in it reacts.</exception>
    public static EquivalentWeight OfMixture(IReadOnlyList<(Mass Mass, EquivalentWeight Weight)> parts)
    {
        var equivalents = parts.Sum(part => part.Mass.Grams / part.Weight.GramsPerEquivalent);
        return equivalents > 0
            ? EquivalentWeight.FromGramsPerEquivalent(parts.Sum(part => part.Mass.Grams) / equivalents)
            : throw new ArgumentException("A mixture has something in it that reacts.", nameof(parts));
    }
}
