using StudioBot.Craft.Units;

namespace StudioBot.Craft.Air;

/// <summary>How hard water vapour pushes: what the air holds, what it could hold, or what it still lacks.</summary>
public readonly record struct VapourPressure : IComparable<VapourPressure>
{
    private VapourPressure(double kilopascals) =>
        Kilopascals = Quantity.Checked(kilopascals, 0, nameof(VapourPressure));

    /// <summary>In kilopascals; never negative.</summary>
    public double Kilopascals { get; }

    /// <summary>In pascals.</summary>
    public double Pascals => Kilopascals * 1000;

    /// <summary>From kilopascals.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not a number, infinite or negative.</exception>
    public static VapourPressure FromKilopascals(double value) => new(value);

    /// <summary>What air this warm can hold at most.</summary>
    /// <remarks>
    /// 0.6108·exp(17.27·T/(T + 237.3)), FAO-56 equation 11. Holds from 0 to 50 °C, within about 0.15 % of water tables.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">Colder than 0 °C or warmer than 50 °C.</exception>
    public static VapourPressure Saturated(Temperature air) =>
        air.Celsius is >= RoomAir.ColdestCelsius and <= RoomAir.WarmestCelsius
            ? new(0.6108 * Math.Exp(17.27 * air.Celsius / (air.Celsius + 237.3)))
            : throw new ArgumentOutOfRangeException(nameof(air), air.Celsius, "Vapour pressure holds from 0 to 50 °C.");

    /// <summary>
    /// The mean of several, as FAO-56 asks: pressures are averaged, never the pressure of a mean temperature.
    /// </summary>
    /// <exception cref="ArgumentException">There is none.</exception>
    public static VapourPressure Mean(IReadOnlyCollection<VapourPressure> readings) => readings.Count > 0
        ? new(readings.Average(reading => reading.Kilopascals))
        : throw new ArgumentException("A mean needs at least one reading.", nameof(readings));

    /// <inheritdoc/>
    public int CompareTo(VapourPressure other) => Kilopascals.CompareTo(other.Kilopascals);

    public static bool operator <(VapourPressure left, VapourPressure right) => left.Kilopascals < right.Kilopascals;

    public static bool operator >(VapourPressure left, VapourPressure right) => left.Kilopascals > right.Kilopascals;

    public static bool operator <=(VapourPressure left, VapourPressure right) => left.Kilopascals <= right.Kilopascals;

    public static bool operator >=(VapourPressure left, VapourPressure right) => left.Kilopascals >= right.Kilopascals;

    /// <summary>How many times the right one the left is.</summary>
    public static double operator /(VapourPressure left, VapourPressure right) => left.Kilopascals / right.Kilopascals;
}
