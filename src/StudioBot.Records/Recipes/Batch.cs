using StudioBot.Craft.Units;

namespace StudioBot.Records.Recipes;

/// <summary>A mixed amount with a number.</summary>
/// <param name="Number">As written on the cup; 1 or more.</param>
/// <param name="Recipe">The name of the recipe it follows.</param>
/// <param name="Maker">The name of who mixed it.</param>
/// <param name="MadeAt">When, UTC.</param>
/// <param name="Made">How much it was then; above zero.</param>
public sealed record Batch(int Number, string Recipe, string Maker, DateTimeOffset MadeAt, Volume Made)
{
    /// <summary>The lot it became in the stock; none where its recipe makes no material.</summary>
    public long? LotId { get; init; }

    /// <summary>The act it hangs from.</summary>
    public long? ActId { get; init; }
}
