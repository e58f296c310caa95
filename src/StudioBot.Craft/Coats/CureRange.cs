using StudioBot.Craft.Units;

namespace StudioBot.Craft.Coats;

/// <summary>Where times from a resin's sheet may be carried to another temperature.</summary>
internal static class CureRange
{
    public const double ColdestCelsius = 10;
    private const double CoolCelsius = 15;
    private const double WarmCelsius = 30;
    private const double FarDegrees = 10;

    /// <summary>The finding for temperatures from the coldest to the warmest met (common practice).</summary>
    public static Finding<T> Of<T>(T value, Temperature coldest, Temperature warmest, Temperature reference) =>
        coldest.Celsius < ColdestCelsius ? TooCold<T>()
        : coldest.Celsius < CoolCelsius ? new Finding<T>.Cautioned(
            value, "below 15 °C it may never cure well, and may blush")
        : warmest.Celsius > WarmCelsius ? new Finding<T>.Cautioned(
            value, "above 30 °C it may go much faster than this")
        : Far(coldest, reference) || Far(warmest, reference) ? new Finding<T>.Cautioned(
            value, "more than 10 °C from the sheet's temperature: a rough guess")
        : new Finding<T>.Found(value);

    public static Finding<T> TooCold<T>() => new Finding<T>.None(
        NoFigure.OutOfRange, "below 10 °C nobody can say whether it cures", "warm the room, or wait for a warmer day");

    private static bool Far(Temperature met, Temperature reference) =>
        Math.Abs(met.Celsius - reference.Celsius) > FarDegrees;
}
