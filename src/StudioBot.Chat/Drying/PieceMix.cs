using StudioBot.Craft.Drying;
using StudioBot.Craft.Units;

namespace StudioBot.Chat.Drying;

/// <summary>What a millilitre of wet film holds.</summary>
/// <param name="Water">What leaves it.</param>
/// <param name="Solids">What stays.</param>
internal sealed record PieceMix(Density Water, Density Solids)
{
    /// <summary>What stays by mass of a paint nobody knows, as a pouring medium has it (common practice).</summary>
    public const double UsualSolids = 0.45;

    /// <summary>A mix nobody knows (common practice).</summary>
    public static PieceMix Unknown { get; } = new(
        WaterContent.OfUnknownFilm,
        Density.FromGramsPerMillilitre(
            WaterContent.OfUnknownFilm.GramsPerMillilitre * UsualSolids / (1 - UsualSolids)));

    /// <summary>A millilitre of it.</summary>
    public Density Whole => Density.FromGramsPerMillilitre(Water.GramsPerMillilitre + Solids.GramsPerMillilitre);

    /// <summary>The share of its mass that stays, 0 to 1.</summary>
    public double NonVolatile => Solids.GramsPerMillilitre / Whole.GramsPerMillilitre;
}
