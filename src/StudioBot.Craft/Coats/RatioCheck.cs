using StudioBot.Craft.Units;

namespace StudioBot.Craft.Coats;

/// <summary>How far a mix of A and B is off the sheet's ratio.</summary>
/// <param name="Off">B over the B that belongs to this A, less 1: −0.05 is 5 % too little hardener.</param>
/// <param name="AddA">How much A puts it right; nothing when B is short.</param>
/// <param name="AddB">How much B puts it right; nothing when A is short.</param>
public sealed record RatioCheck(double Off, Mass AddA, Mass AddB)
{
    private const double Fine = 0.02;
    private const double Poor = 0.05;

    // Weighed amounts that are off by exactly the limit are not beyond it.
    private const double Rounding = 1e-9;

    /// <summary>Fine to 2 %, caution to 5 %, beyond it don't pour (common practice).</summary>
    public RatioVerdict Verdict =>
        Math.Abs(Off) <= Fine + Rounding ? RatioVerdict.Fine
        : Math.Abs(Off) <= Poor + Rounding ? RatioVerdict.Caution
        : RatioVerdict.DoNotPour;

    /// <summary>Checks what was weighed in. More hardener never means faster.</summary>
    /// <exception cref="ArgumentOutOfRangeException">There is no A.</exception>
    public static RatioCheck Of(Resin resin, Mass a, Mass b)
    {
        if (a.Grams <= 0)
        {
            throw new ArgumentOutOfRangeException(nameof(a), "A mix has some of part A.");
        }

        var perA = resin.MassOfBPer100A / 100;
        return new RatioCheck(
            b.Grams / (a.Grams * perA) - 1,
            Mass.FromGrams(Math.Max(0, b.Grams / perA - a.Grams)),
            Mass.FromGrams(Math.Max(0, a.Grams * perA - b.Grams)));
    }

    /// <summary>Checks what was measured by volume.</summary>
    /// <exception cref="ArgumentOutOfRangeException">There is no A.</exception>
    public static RatioCheck Of(Resin resin, Volume a, Volume b) => Of(resin, a * resin.PartA, b * resin.PartB);
}
