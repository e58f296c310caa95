namespace StudioBot.Craft.Units;

/// <summary>How much face there is to cover.</summary>
public readonly record struct Area : IComparable<Area>
{
    private const double SquareCentimetre = 1e-4;

    private Area(double squareMetres) => SquareMetres = Quantity.Checked(squareMetres, 0, nameof(Area));

    /// <summary>In square metres.</summary>
    public double SquareMetres { get; }

    /// <summary>In square centimetres.</summary>
    public double SquareCentimetres => SquareMetres / SquareCentimetre;

    /// <summary>From square metres.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not a number, infinite or negative.</exception>
    public static Area FromSquareMetres(double value) => new(value);

    /// <summary>From square centimetres.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not a number, infinite or negative.</exception>
    public static Area FromSquareCentimetres(double value) => new(value * SquareCentimetre);

    /// <inheritdoc/>
    public int CompareTo(Area other) => SquareMetres.CompareTo(other.SquareMetres);

    public static bool operator <(Area left, Area right) => left.SquareMetres < right.SquareMetres;

    public static bool operator >(Area left, Area right) => left.SquareMetres > right.SquareMetres;

    public static bool operator <=(Area left, Area right) => left.SquareMetres <= right.SquareMetres;

    public static bool operator >=(Area left, Area right) => left.SquareMetres >= right.SquareMetres;

    public static Area operator +(Area left, Area right) => new(left.SquareMetres + right.SquareMetres);

    public static Area operator *(Area left, double times) => new(left.SquareMetres * times);

    public static Area operator *(double times, Area right) => new(right.SquareMetres * times);

    public static Area operator /(Area left, double parts) => new(left.SquareMetres / parts);

    /// <summary>How many times the right one fits into the left.</summary>
    public static double operator /(Area left, Area right) => left.SquareMetres / right.SquareMetres;

    /// <summary>A film of this thickness on this face: 1 mm over 1 m² is exactly 1 L.</summary>
    public static Volume operator *(Area face, Length film) => Volume.FromLitres(face.SquareMetres * film.Millimetres);

    /// <summary>How wide a strip of this length the area makes.</summary>
    public static Length operator /(Area face, Length length) => Length.FromMetres(face.SquareMetres / length.Metres);
}
