using StudioBot.Craft.Surfaces;
using StudioBot.Craft.Units;
using StudioBot.Records.Recipes;

namespace StudioBot.Records.Pieces;

/// <summary>What came of a pour.</summary>
/// <param name="Number">As written under it; 1 or more.</param>
/// <param name="Surface">Its shape and sizes.</param>
/// <param name="Depth">How deep its covered sides are; none where only the face was poured.</param>
/// <param name="Technique">The name of the technique.</param>
/// <param name="Colours">How many colours; none where nobody said.</param>
/// <param name="Recipe">The name of the recipe; none for colours named one by one.</param>
/// <param name="Batch">The number of the batch it was poured from; none where nobody said.</param>
/// <param name="Maker">The name of who poured it.</param>
/// <param name="PouredAt">When, UTC.</param>
/// <param name="Stage">How far it is.</param>
/// <param name="Shelf">The label of the shelf it lies on; none where it lies on none.</param>
/// <param name="Parts">What was poured, as it was poured; empty where nobody said.</param>
public sealed record Piece(
    int Number,
    Surface Surface,
    Length? Depth,
    string Technique,
    int? Colours,
    string? Recipe,
    int? Batch,
    string Maker,
    DateTimeOffset PouredAt,
    Stage Stage,
    string? Shelf,
    IReadOnlyList<Part> Parts);
