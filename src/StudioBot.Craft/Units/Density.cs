namespace StudioBot.Craft.Units;

/// <summary>Mass of one millilitre.</summary>
public readonly record struct Density : IComparable<Density>
{
    private const double KilogramPerCubicMetre = 0.001;

    private Density(double gramsPerMillilitre) =>
        GramsPerMillilitre = Quantity.Checked(gramsPerMillilitre, 0, nameof(Density));

    /// <summary>In grams per millilitre.</summary>
    public double GramsPerMillilitre { get; }

    /// <summary>In kilograms per cubic metre.</summary>
    public double KilogramsPerCubicMetre => GramsPerMillilitre / KilogramPerCubicMetre;

    /// <summary>From grams per millilitre.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not a number, infinite or negative.</exception>
    public static Density FromGramsPerMillilitre(double value) => new(value);

    /// <summary>From kilograms per cubic metre.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not a number, infinite or negative.</exception>
    public static Density FromKilogramsPerCubicMetre(double value) => new(value * KilogramPerCubicMetre);

    /// <inheritdoc/>
    public int CompareTo(Density other) => GramsPerMillilitre.CompareTo(other.GramsPerMillilitre);

    public static bool operator <(Density left, Density right) => left.GramsPerMillilitre < right.GramsPerMillilitre;

    public static bool operator >(Density left, Density right) => left.GramsPerMillilitre > right.GramsPerMillilitre;

    public static bool operator <=(Density left, Density right) => left.GramsPerMillilitre <= right.GramsPerMillilitre;

    public static bool operator >=(Density left, Density right) => left.GramsPerMillilitre >= right.GramsPerMillilitre;
}
