using StudioBot.Craft.Mixing;
using StudioBot.Craft.Units;

namespace StudioBot.Craft.Coats;

/// <summary>A two-part resin: the sheet's ratio A:B and how dense the parts are.</summary>
public sealed record Resin
{
    /// <summary>A resin.</summary>
    /// <param name="ratio">The sheet's, A first, by volume or by mass.</param>
    /// <param name="partA">Density of part A, above zero.</param>
    /// <param name="partB">Density of part B, above zero.</param>
    /// <exception cref="ArgumentException">Not two parts, or a density of zero.</exception>
    public Resin(MixRatio ratio, Density partA, Density partB)
    {
        if (ratio.Parts.Count != 2)
        {
            throw new ArgumentException("A resin has two parts.", nameof(ratio));
        }

        if (partA.GramsPerMillilitre <= 0 || partB.GramsPerMillilitre <= 0)
        {
            throw new ArgumentException("A density is above zero.", nameof(partA));
        }

        (Ratio, PartA, PartB) = (ratio, partA, partB);
    }

    /// <summary>The sheet's ratio, A first.</summary>
    public MixRatio Ratio { get; }

    /// <summary>How dense part A is.</summary>
    public Density PartA { get; }

    /// <summary>How dense part B is.</summary>
    public Density PartB { get; }

    /// <summary>Parts of B to 100 of A on a scale: 100·ρ_B·v_B/(ρ_A·v_A).</summary>
    public double MassOfBPer100A => Ratio.By == RatioBy.Mass
        ? Plain
        : Plain * PartB.GramsPerMillilitre / PartA.GramsPerMillilitre;

    /// <summary>Parts of B to 100 of A in a graduated cup.</summary>
    public double VolumeOfBPer100A => Ratio.By == RatioBy.Volume
        ? Plain
        : Plain * PartA.GramsPerMillilitre / PartB.GramsPerMillilitre;

    private double Plain => 100 * Ratio.Parts[1] / Ratio.Parts[0];

    /// <summary>The two parts of so much mixed resin.</summary>
    public ResinAmounts Split(Volume total) => WithA(total / (1 + VolumeOfBPer100A / 100));

    /// <summary>The two parts of so much mixed resin.</summary>
    public ResinAmounts Split(Mass total) => WithA(total / (1 + MassOfBPer100A / 100) / PartA);

    /// <summary>This much A, and the B that belongs to it.</summary>
    public ResinAmounts WithA(Volume a)
    {
        var b = a * (VolumeOfBPer100A / 100);
        return new ResinAmounts(new ResinPart(a, a * PartA), new ResinPart(b, b * PartB));
    }

    /// <summary>This much B, and the A that belongs to it.</summary>
    public ResinAmounts WithB(Volume b) => WithA(b / (VolumeOfBPer100A / 100));
}
