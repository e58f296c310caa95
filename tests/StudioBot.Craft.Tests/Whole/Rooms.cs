using StudioBot.Craft.Air;
using StudioBot.Craft.Units;

namespace StudioBot.Craft.Tests.Whole;

/// <summary>Rooms as the check rows write them: <c>20C/55%</c>.</summary>
internal static class Rooms
{
    public static RoomAir Of(double celsius, double percent) =>
        new(Temperature.FromCelsius(celsius), RelativeHumidity.FromPercent(percent));

    public static RoomAir Read(string text)
    {
        var parts = text.Split("C/");
        return Of(Inputs.Parse(parts[0]), Inputs.Parse(parts[1].TrimEnd('%')));
    }

    /// <summary>The room in <c>T_C</c> and <c>RH</c>.</summary>
    public static RoomAir Air(this Inputs given) => Of(given.Number("T_C"), given.Number("RH"));
}
