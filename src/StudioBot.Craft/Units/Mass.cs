namespace StudioBot.Craft.Units;

/// <summary>How much something weighs.</summary>
public readonly record struct Mass : IComparable<Mass>
{
    // Grams in one; sources stand at the members that use them.
    private const double Kilogram = 1000;
    private const double Ounce = 28.349523125;
    private const double Pound = 453.59237;

    private Mass(double grams) => Grams = Quantity.Checked(grams, 0, nameof(Mass));

    /// <summary>In grams.</summary>
    public double Grams { get; }

    /// <summary>In kilograms.</summary>
    public double Kilograms => Grams / Kilogram;

    /// <summary>In avoirdupois ounces of 28.349523125 g (16 CFR 500.19 gives 28.3495; last digits from
    /// memory).</summary>
    public double Ounces => Grams / Ounce;

    /// <summary>In pounds of 453.59237 g (16 CFR 500.19 gives 453.592; last digits from memory).</summary>
    public double Pounds => Grams / Pound;

    /// <summary>From grams.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not a number, infinite or negative.</exception>
    public static Mass FromGrams(double value) => new(value);

    /// <summary>From kilograms.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not a number, infinite or negative.</exception>
    public static Mass FromKilograms(double value) => new(value * Kilogram);

    /// <summary>From avoirdupois ounces of 28.349523125 g (16 CFR 500.19 gives 28.3495; last digits from
    /// memory).</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not a number, infinite or negative.</exception>
    public static Mass FromOunces(double value) => new(value * Ounce);

    /// <summary>From pounds of 453.59237 g (16 CFR 500.19 gives 453.592; last digits from memory).</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not a number, infinite or negative.</exception>
    public static Mass FromPounds(double value) => new(value * Pound);

    /// <inheritdoc/>
    public int CompareTo(Mass other) => Grams.CompareTo(other.Grams);

    public static bool operator <(Mass left, Mass right) => left.Grams < right.Grams;

    public static bool operator >(Mass left, Mass right) => left.Grams > right.Grams;

    public static bool operator <=(Mass left, Mass right) => left.Grams <= right.Grams;

    public static bool operator >=(Mass left, Mass right) => left.Grams >= right.Grams;

    public static Mass operator +(Mass left, Mass right) => new(left.Grams + right.Grams);

    public static Mass operator *(Mass left, double times) => new(left.Grams * times);

    public static Mass operator *(double times, Mass right) => new(right.Grams * times);

    public static Mass operator /(Mass left, double parts) => new(left.Grams / parts);

    /// <summary>How many times the right one fits into the left.</summary>
    public static double operator /(Mass left, Mass right) => left.Grams / right.Grams;

    /// <summary>How much space this mass takes.</summary>
    public static Volume operator /(Mass mass, Density density) =>
        Volume.FromMillilitres(mass.Grams / density.GramsPerMillilitre);

    /// <summary>What one millilitre of it weighs.</summary>
    public static Density operator /(Mass mass, Volume volume) =>
        Density.FromGramsPerMillilitre(mass.Grams / volume.Millilitres);
}
