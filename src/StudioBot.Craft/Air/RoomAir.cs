using StudioBot.Craft.Units;

namespace StudioBot.Craft.Air;

/// <summary>The air of a room at one moment: how warm, how humid.</summary>
public sealed record RoomAir
{
    /// <summary>The coldest air these formulas know, °C.</summary>
    public const double ColdestCelsius = 0;

    /// <summary>The warmest air these formulas know, °C.</summary>
    public const double WarmestCelsius = 50;

    /// <summary>Air of this temperature and humidity.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Colder than 0 °C or warmer than 50 °C; see <see
    /// cref="Read"/>.</exception>
    public RoomAir(Temperature temperature, RelativeHumidity humidity)
    {
        Saturation = VapourPressure.Saturated(temperature);
        Vapour = VapourPressure.FromKilopascals(Saturation.Kilopascals * humidity.Share);
        Temperature = temperature;
        Humidity = humidity;
    }

    /// <summary>The reference room of every drying time: 23 °C, 50 %; lacks 1.4047 kPa.</summary>
    public static RoomAir Reference { get; } = Of(23, 50);

    /// <summary>What is assumed of a room nobody has read: 20 °C, 55 % (common practice).</summary>
    public static RoomAir Assumed { get; } = Of(20, 55);

    /// <summary>How warm the air is, 0 to 50 °C.</summary>
    public Temperature Temperature { get; }

    /// <summary>How humid it is.</summary>
    public RelativeHumidity Humidity { get; }

    /// <summary>What it could hold.</summary>
    public VapourPressure Saturation { get; }

    /// <summary>What it holds.</summary>
    public VapourPressure Vapour { get; }

    /// <summary>What it still lacks (the vapour pressure deficit): the pull that dries paint.</summary>
    public VapourPressure Deficit => VapourPressure.FromKilopascals(Saturation.Kilopascals - Vapour.Kilopascals);

    /// <summary>Air as somebody read it, or why these formulas do not know it.</summary>
    public static Finding<RoomAir> Read(Temperature temperature, RelativeHumidity humidity) =>
        temperature.Celsius is >= ColdestCelsius and <= WarmestCelsius
            ? new Finding<RoomAir>.Found(new RoomAir(temperature, humidity))
            : new Finding<RoomAir>.None(
                NoFigure.OutOfRange,
                "the formulas for air hold from 0 to 50 °C",
                "read it again in a room people can work in");

    /// <summary>The same vapour in air of another temperature: what a heater or a cool night does.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside 0 to 50 °C.</exception>
    public RoomAir At(Temperature temperature) => new(
        temperature,
        RelativeHumidity.FromPercent(Math.Min(100, 100 * (Vapour / VapourPressure.Saturated(temperature)))));

    private static RoomAir Of(double celsius, double percent) =>
        new(Temperature.FromCelsius(celsius), RelativeHumidity.FromPercent(percent));
}
