namespace StudioBot.Craft.Units;

/// <summary>How warm air, a surface or a liquid is; never below absolute zero.</summary>
public readonly record struct Temperature : IComparable<Temperature>
{
    /// <summary>0 K in degrees Celsius.</summary>
    public const double AbsoluteZeroCelsius = -273.15;

    private const double FahrenheitPerDegree = 1.8;
    private const double FahrenheitAtFreezing = 32;

    private Temperature(double celsius) =>
        Celsius = Quantity.Checked(celsius, AbsoluteZeroCelsius, nameof(Temperature));

    /// <summary>In degrees Celsius.</summary>
    public double Celsius { get; }

    /// <summary>In kelvin, for exponentials.</summary>
    public double Kelvin => Celsius - AbsoluteZeroCelsius;

    /// <summary>In degrees Fahrenheit.</summary>
    public double Fahrenheit => Celsius * FahrenheitPerDegree + FahrenheitAtFreezing;

    /// <summary>From degrees Celsius.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not a number, infinite or below absolute zero.</exception>
    public static Temperature FromCelsius(double value) => new(value);

    /// <summary>From degrees Fahrenheit.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not a number, infinite or below absolute zero.</exception>
    public static Temperature FromFahrenheit(double value) => new((value - FahrenheitAtFreezing) / FahrenheitPerDegree);

    /// <summary>This much warmer, or cooler where the degrees are negative.</summary>
    public Temperature Warmer(double degrees) => new(Celsius + degrees);

    /// <inheritdoc/>
    public int CompareTo(Temperature other) => Celsius.CompareTo(other.Celsius);

    public static bool operator <(Temperature left, Temperature right) => left.Celsius < right.Celsius;

    public static bool operator >(Temperature left, Temperature right) => left.Celsius > right.Celsius;

    public static bool operator <=(Temperature left, Temperature right) => left.Celsius <= right.Celsius;

    public static bool operator >=(Temperature left, Temperature right) => left.Celsius >= right.Celsius;
}
