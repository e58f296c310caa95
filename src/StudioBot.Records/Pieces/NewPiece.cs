using StudioBot.Craft.Surfaces;
using StudioBot.Craft.Units;
using StudioBot.Records.Members;
using StudioBot.Records.Recipes;
using StudioBot.Records.Rooms;

namespace StudioBot.Records.Pieces;

/// <summary>A pour, as it is recorded.</summary>
/// <param name="Surface">Its shape and sizes, to the micrometre.</param>
/// <param name="Technique">The name of the technique.</param>
/// <param name="Maker">Who poured it.</param>
/// <param name="PouredAt">When.</param>
public sealed record NewPiece(Surface Surface, string Technique, Member Maker, DateTimeOffset PouredAt)
{
    /// <summary>The number that was reserved for it; none: the next.</summary>
    public int? Number { get; init; }

    /// <summary>What was poured, with what ran off and what stayed in the cups.</summary>
    public Volume? Poured { get; init; }

    /// <summary>How deep its covered sides are.</summary>
    public Length? Depth { get; init; }

    /// <summary>How many colours; 1 or more.</summary>
    public int? Colours { get; init; }

    /// <summary>The recipe it follows.</summary>
    public Recipe? Recipe { get; init; }

    /// <summary>The number of the batch it was poured from.</summary>
    public int? Batch { get; init; }

    /// <summary>How far it is.</summary>
    public Stage Stage { get; init; } = Stage.Drying;

    /// <summary>Where it lies.</summary>
    public Shelf? Shelf { get; init; }

    /// <summary>What was poured; each of another material, above zero, by volume or by mass.</summary>
    public IReadOnlyList<Part> Parts { get; init; } = [];
}
