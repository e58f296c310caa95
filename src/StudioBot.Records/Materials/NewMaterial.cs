using StudioBot.Craft.Units;

namespace StudioBot.Records.Materials;

/// <summary>What is known of a material when the studio first names it.</summary>
/// <param name="Name">As people type it, 1 to 60 characters.</param>
/// <param name="Form">In which form it is kept.</param>
public sealed record NewMaterial(string Name, MaterialForm Form)
{
    /// <summary>Of the liquid, or of a powder's grains.</summary>
    public Density? Density { get; init; }

    /// <summary>What a level teaspoon of a powder weighs.</summary>
    public Mass? GramsPerTeaspoon { get; init; }

    /// <summary>What stays of it when it is dry, by mass, 0 to 1.</summary>
    public double? SolidsShare { get; init; }

    /// <summary>The level at which it counts as low.</summary>
    public Amount? Low { get; init; }

    /// <summary>The sizes it is sold in.</summary>
    public IReadOnlyList<Pack> Packs { get; init; } = [];
}
