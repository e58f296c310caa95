using StudioBot.Craft.Units;

namespace StudioBot.Craft.Drying;

/// <summary>What is known of a poured piece that bears on its ready day.</summary>
/// <param name="Film">The wet film it was poured with, above zero.</param>
/// <param name="Water">The water in it (<see cref="WaterContent"/>).</param>
public sealed record DryingPiece(Length Film, Mass Water)
{
    /// <summary>What it was poured on.</summary>
    public Ground Ground { get; init; }

    /// <summary>The maker's words and the coats' outcomes, in any order.</summary>
    public IReadOnlyList<MakerWord> Words { get; init; } = [];

    /// <summary>All weighings, in any order; which of them are used is decided here.</summary>
    public IReadOnlyList<Weighing> Weighings { get; init; } = [];

    /// <summary>One weighing's standard deviation (<see cref="WeighingNoise"/>); above zero where there are weighings.</summary>
    public Mass Deviation { get; init; } = Mass.FromGrams(1);

    /// <summary>What it will weigh when dry, where the bare panel was weighed.</summary>
    public DryMass? Dry { get; init; }
}
