using StudioBot.Craft.Units;

namespace StudioBot.Craft.Practice;

/// <summary>A generic material that every studio starts with; its own figures lie over these.</summary>
/// <param name="Name">As people type it: white, lamp black.</param>
/// <param name="OtherNames">Other words for it.</param>
/// <param name="Kind">What it is for.</param>
/// <param name="Density">Of the liquid, or of a powder's grains; none for what is counted in pieces.</param>
/// <param name="Solids">Non-volatile matter by mass, 0 to 1; none where nothing dries.</param>
/// <param name="GramsPerTeaspoon">What a level teaspoon of this powder weighs; none for a liquid.</param>
/// <param name="CautionAsBase">One line on why it makes a poor base coat; none where it makes a good one.</param>
public sealed record StarterMaterial(
    string Name,
    IReadOnlyList<string> OtherNames,
    MaterialKind Kind,
    Sourced<Density>? Density,
    Sourced<double>? Solids,
    Sourced<Mass>? GramsPerTeaspoon,
    Sourced<string>? CautionAsBase);
