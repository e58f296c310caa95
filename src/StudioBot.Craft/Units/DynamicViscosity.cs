namespace StudioBot.Craft.Units;

/// <summary>How hard a liquid resists flowing.</summary>
public readonly record struct DynamicViscosity : IComparable<DynamicViscosity>
{
    private const double MillipascalSecond = 0.001;

    private DynamicViscosity(double pascalSeconds) =>
        PascalSeconds = Quantity.Checked(pascalSeconds, 0, nameof(DynamicViscosity));

    /// <summary>In pascal seconds.</summary>
    public double PascalSeconds { get; }

    /// <summary>In millipascal seconds.</summary>
    public double MillipascalSeconds => PascalSeconds / MillipascalSecond;

    /// <summary>From pascal seconds.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not a number, infinite or negative.</exception>
    public static DynamicViscosity FromPascalSeconds(double value) => new(value);

    /// <summary>From millipascal seconds.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not a number, infinite or negative.</exception>
    public static DynamicViscosity FromMillipascalSeconds(double value) => new(value * MillipascalSecond);

    /// <inheritdoc/>
    public int CompareTo(DynamicViscosity other) => PascalSeconds.CompareTo(other.PascalSeconds);

    public static bool operator <(DynamicViscosity left, DynamicViscosity right) =>
        left.PascalSeconds < right.PascalSeconds;

    public static bool operator >(DynamicViscosity left, DynamicViscosity right) =>
        left.PascalSeconds > right.PascalSeconds;

    public static bool operator <=(DynamicViscosity left, DynamicViscosity right) =>
        left.PascalSeconds <= right.PascalSeconds;

    public static bool operator >=(DynamicViscosity left, DynamicViscosity right) =>
        left.PascalSeconds >= right.PascalSeconds;
}
