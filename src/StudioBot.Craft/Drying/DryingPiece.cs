using StudioBot.Craft.Units;

namespace StudioBot.Craft.Drying;

/// <summary>What is known of a poured piece that bears on its ready day.</summary>
public sealed record DryingPiece
{
    private readonly Mass _deviation = Mass.FromGrams(1);

    /// <summary>A piece of this film and water.</summary>
    /// <param name="film">The wet film it was poured with, above zero.</param>
    /// <param name="water">The water in it (<see cref="WaterContent"/>).</param>
    /// <exception cref="ArgumentOutOfRangeException">The film is zero.</exception>
    public DryingPiece(Length film, Mass water)
    {
        Film = film.Metres > 0
            ? film
            : throw new ArgumentOutOfRangeException(nameof(film), "A poured film is above zero.");
        Water = water;
    }

    /// <summary>The wet film it was poured with, above zero.</summary>
    public Length Film { get; }

    /// <summary>The water in it at the pour.</summary>
    public Mass Water { get; }

    /// <summary>What it was poured on.</summary>
    public Ground Ground { get; init; }

    /// <summary>The room it dries in; none where that is not known.</summary>
    public string? Room { get; init; }

    /// <summary>The maker's words and the coats' outcomes, in any order.</summary>
    public IReadOnlyList<MakerWord> Words { get; init; } = [];

    /// <summary>All weighings, in any order; which of them are used is decided here.</summary>
    public IReadOnlyList<Weighing> Weighings { get; init; } = [];

    /// <summary>One weighing's standard deviation (<see cref="WeighingNoise"/>), above zero.</summary>
    /// <exception cref="ArgumentOutOfRangeException">It is zero: no scale is that good.</exception>
    public Mass Deviation
    {
        get => _deviation;
        init => _deviation = value.Grams > 0
            ? value
            : throw new ArgumentOutOfRangeException(nameof(Deviation), "A weighing's deviation is above zero.");
    }

    /// <summary>What it will weigh when dry, where the bare panel was weighed.</summary>
    public DryMass? Dry { get; init; }
}
