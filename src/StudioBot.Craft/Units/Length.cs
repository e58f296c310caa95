namespace StudioBot.Craft.Units;

/// <summary>A distance: a side, a diameter, a film's thickness.</summary>
public readonly record struct Length : IComparable<Length>
{
    // Metres in one; sources stand at the members that use them.
    private const double Centimetre = 0.01;
    private const double Millimetre = 0.001;
    private const double Micrometre = 1e-6;
    private const double Inch = 0.0254;
    private const double Foot = 0.3048;

    private Length(double metres) => Metres = Quantity.Checked(metres, 0, nameof(Length));

    /// <summary>In metres.</summary>
    public double Metres { get; }

    /// <summary>In centimetres.</summary>
    public double Centimetres => Metres / Centimetre;

    /// <summary>In millimetres.</summary>
    public double Millimetres => Metres / Millimetre;

    /// <summary>In micrometres.</summary>
    public double Micrometres => Metres / Micrometre;

    /// <summary>In inches of 2.54 cm (16 CFR 500.19).</summary>
    public double Inches => Metres / Inch;

    /// <summary>In feet of 30.48 cm (16 CFR 500.19).</summary>
    public double Feet => Metres / Foot;

    /// <summary>From metres.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not a number, infinite or negative.</exception>
    public static Length FromMetres(double value) => new(value);

    /// <summary>From centimetres.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not a number, infinite or negative.</exception>
    public static Length FromCentimetres(double value) => new(value * Centimetre);

    /// <summary>From millimetres.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not a number, infinite or negative.</exception>
    public static Length FromMillimetres(double value) => new(value * Millimetre);

    /// <summary>From micrometres.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not a number, infinite or negative.</exception>
    public static Length FromMicrometres(double value) => new(value * Micrometre);

    /// <summary>From inches of 2.54 cm (16 CFR 500.19).</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not a number, infinite or negative.</exception>
    public static Length FromInches(double value) => new(value * Inch);

    /// <summary>From feet of 30.48 cm (16 CFR 500.19).</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not a number, infinite or negative.</exception>
    public static Length FromFeet(double value) => new(value * Foot);

    /// <inheritdoc/>
    public int CompareTo(Length other) => Metres.CompareTo(other.Metres);

    public static bool operator <(Length left, Length right) => left.Metres < right.Metres;

    public static bool operator >(Length left, Length right) => left.Metres > right.Metres;

    public static bool operator <=(Length left, Length right) => left.Metres <= right.Metres;

    public static bool operator >=(Length left, Length right) => left.Metres >= right.Metres;

    public static Length operator +(Length left, Length right) => new(left.Metres + right.Metres);

    public static Length operator *(Length left, double times) => new(left.Metres * times);

    public static Length operator *(double times, Length right) => new(right.Metres * times);

    public static Length operator /(Length left, double parts) => new(left.Metres / parts);

    /// <summary>How many times the right one fits into the left.</summary>
    public static double operator /(Length left, Length right) => left.Metres / right.Metres;

    /// <summary>A face of these two sides.</summary>
    public static Area operator *(Length left, Length right) => Area.FromSquareMetres(left.Metres * right.Metres);
}
