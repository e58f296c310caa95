namespace StudioBot.Craft.Air;

/// <summary>How fast a room dries paint, counted in the reference room of 23 °C and 50 %.</summary>
public static class DryingSpeed
{
    /// <summary>At or below this the air hardly takes water and drying stands still (common practice).</summary>
    public static VapourPressure StandsStillAt { get; } = VapourPressure.FromKilopascals(0.05);

    /// <summary>Below this a film may not coalesce whatever the time (from memory), °C.</summary>
    public const double ColdestCelsius = 10;

    internal const string TooDamp = "not drying in this air: it can take no more water";
    internal const string WarmOrDry = "warm the room or dry the air";
    internal const string TooCold = "below 10 °C the film may not close, whatever the time";
    internal const string WarmUp = "warm the room to 10 °C or more";

    /// <summary>The deficit over the reference room's; 0 where drying stands still. Moving air is not in it.</summary>
    public static double Rate(VapourPressure deficit) =>
        deficit <= StandsStillAt ? 0 : deficit / RoomAir.Reference.Deficit;

    /// <summary>
    /// So many times the reference room, with a caution in the cold, or no speed in air that takes no water.
    /// </summary>
    public static Finding<double> Of(RoomAir air) => Rate(air.Deficit) switch
    {
        0 => new Finding<double>.None(NoFigure.OutOfRange, TooDamp, WarmOrDry),
        var rate when air.Temperature.Celsius < ColdestCelsius => new Finding<double>.Cautioned(
            rate, "water leaves, but below 10 °C the film may not close"),
        var rate => new Finding<double>.Found(rate),
    };
}
