namespace StudioBot.Craft.Units;

/// <summary>How much liquid there is; never negative, a shortage has its own word.</summary>
public readonly record struct Volume : IComparable<Volume>
{
    // Millilitres in one; sources stand at the members that use them.
    private const double MillilitresPerLitre = 1000;
    private const double UsFluidOunce = 29.5735295625;
    private const double ImperialFluidOunce = 28.4130625;

    private Volume(double millilitres) => Millilitres = Quantity.Checked(millilitres, 0, nameof(Volume));

    /// <summary>In millilitres.</summary>
    public double Millilitres { get; }

    /// <summary>In litres.</summary>
    public double Litres => Millilitres / MillilitresPerLitre;

    /// <summary>In US fluid ounces of 29.5735295625 mL (16 CFR 500.19 gives 29.5735).</summary>
    public double UsFluidOunces => Millilitres / UsFluidOunce;

    /// <summary>In imperial fluid ounces of 28.4130625 mL.</summary>
    public double ImperialFluidOunces => Millilitres / ImperialFluidOunce;

    /// <summary>From millilitres.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not a number, infinite or negative.</exception>
    public static Volume FromMillilitres(double value) => new(value);

    /// <summary>From litres.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not a number, infinite or negative.</exception>
    public static Volume FromLitres(double value) => new(value * MillilitresPerLitre);

    /// <summary>From US fluid ounces of 29.5735295625 mL (16 CFR 500.19 gives 29.5735).</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not a number, infinite or negative.</exception>
    public static Volume FromUsFluidOunces(double value) => new(value * UsFluidOunce);

    /// <summary>From imperial fluid ounces of 28.4130625 mL.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not a number, infinite or negative.</exception>
    public static Volume FromImperialFluidOunces(double value) => new(value * ImperialFluidOunce);

    /// <inheritdoc/>
    public int CompareTo(Volume other) => Millilitres.CompareTo(other.Millilitres);

    public static bool operator <(Volume left, Volume right) => left.Millilitres < right.Millilitres;

    public static bool operator >(Volume left, Volume right) => left.Millilitres > right.Millilitres;

    public static bool operator <=(Volume left, Volume right) => left.Millilitres <= right.Millilitres;

    public static bool operator >=(Volume left, Volume right) => left.Millilitres >= right.Millilitres;

    public static Volume operator +(Volume left, Volume right) => new(left.Millilitres + right.Millilitres);

    public static Volume operator *(Volume left, double times) => new(left.Millilitres * times);

    public static Volume operator *(double times, Volume right) => new(right.Millilitres * times);

    public static Volume operator /(Volume left, double parts) => new(left.Millilitres / parts);

    /// <summary>How many times the right one fits into the left.</summary>
    public static double operator /(Volume left, Volume right) => left.Millilitres / right.Millilitres;

    /// <summary>What this much liquid weighs.</summary>
    public static Mass operator *(Volume volume, Density density) =>
        Mass.FromGrams(volume.Millilitres * density.GramsPerMillilitre);

    /// <summary>The film this much liquid makes on this face.</summary>
    public static Length operator /(Volume volume, Area face) =>
        Length.FromMillimetres(volume.Litres / face.SquareMetres);
}
