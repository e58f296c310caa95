using StudioBot.Craft.Units;

namespace StudioBot.Records.Materials;

/// <summary>What the studio works with.</summary>
/// <param name="Id">The studio's own number for it.</param>
/// <param name="Name">As people type it; unique, upper and lower case alike.</param>
/// <param name="Form">In which form it is kept.</param>
/// <param name="Density">Of the liquid, or of a powder's grains; none where unknown or counted.</param>
/// <param name="GramsPerTeaspoon">What a level teaspoon of a powder weighs; none while nobody weighed one.</param>
/// <param name="SolidsShare">What stays of it when it is dry, by mass, 0 to 1; none where unknown.</param>
/// <param name="Low">The level at which it counts as low; none: never.</param>
/// <param name="Packs">The sizes it is sold in, smallest first.</param>
public sealed record Material(
    long Id,
    string Name,
    MaterialForm Form,
    Density? Density,
    Mass? GramsPerTeaspoon,
    double? SolidsShare,
    Amount? Low,
    IReadOnlyList<Pack> Packs)
{
    /// <summary>What its bottle weighs empty; none while nobody weighed one.</summary>
    public Mass? Bottle { get; init; }

    /// <summary>How long it keeps once opened, in whole days; none: for ever.</summary>
    public TimeSpan? ShelfLife { get; init; }

    /// <summary>How long an order takes, in whole days; none where nobody said.</summary>
    public TimeSpan? LeadTime { get; init; }

    /// <summary>Whoever takes of it, all use it, and its use is shared by the studio's rule.</summary>
    public bool IsShared { get; init; }
}
