using StudioBot.Craft.Units;

namespace StudioBot.Craft.Air;

/// <summary>What turns a no into a yes, the cheapest first.</summary>
internal static class ResinWays
{
    // Common practice: a room heater gives a few degrees; beyond that a drier is the cheaper of the two.
    private const double EasyWarming = 6;

    // Common practice: between these resin cures well; nobody is told to leave them.
    private const double CoolestGoodCure = 15;
    private const double WarmestGoodCure = 30;

    // Common practice: no drier sold for rooms goes below this.
    private const double DriestPercent = 30;

    public static IReadOnlyList<WayToYes> Of(
        RoomAir air, DewMargin now, DewMargin night, RelativeHumidity limit, List<ResinReason> against)
    {
        if (against.Count == 0)
        {
            return [];
        }

        var target = Temperature.FromCelsius(Math.Ceiling(now.DewPoint.Celsius + DewMargin.LeastDegrees));
        var drier = Drier(air, now, night, limit);
        if (against is [ResinReason.SurfaceNearDewPoint] && target <= air.Temperature)
        {
            return [new WayToYes.WarmPanel(target), .. drier];
        }

        if (against is [ResinReason.NightNearDewPoint] && air.Temperature.Celsius >= CoolestGoodCure)
        {
            return InOrder(new WayToYes.HoldNight(target), target.Celsius - night.Surface.Celsius, drier);
        }

        return Warmer(air, target, limit) is { } to
            ? InOrder(new WayToYes.WarmRoom(to), to.Celsius - air.Temperature.Celsius, drier)
            : drier;
    }

    private static IReadOnlyList<WayToYes> InOrder(WayToYes warm, double degrees, IReadOnlyList<WayToYes> drier) =>
        degrees <= EasyWarming ? [warm, .. drier] : [.. drier, warm];

    /// <summary>The room so warm that both the margin and the humidity are right with today's vapour.</summary>
    private static Temperature? Warmer(RoomAir air, Temperature forMargin, RelativeHumidity limit)
    {
        var celsius = Math.Max(forMargin.Celsius + ResinAir.AssumedSurfaceDrop, Math.Ceiling(air.Temperature.Celsius));
        for (celsius = Math.Max(celsius, CoolestGoodCure); celsius <= WarmestGoodCure; celsius++)
        {
            var warmed = Temperature.FromCelsius(celsius);
            if (air.At(warmed).Humidity.Percent <= limit.Percent)
            {
                return warmed;
            }
        }

        return null;
    }

    private static IReadOnlyList<WayToYes> Drier(
        RoomAir air, DewMargin now, DewMargin night, RelativeHumidity limit)
    {
        var coldest = Math.Min(now.Surface.Celsius, night.Surface.Celsius) - DewMargin.LeastDegrees;
        if (coldest is < RoomAir.ColdestCelsius or > RoomAir.WarmestCelsius)
        {
            return [];
        }

        var allowed = 100 * (VapourPressure.Saturated(Temperature.FromCelsius(coldest)) / air.Saturation);
        var percent = Math.Floor(Math.Min(limit.Percent, allowed));
        return percent >= DriestPercent ? [new WayToYes.DryAir(RelativeHumidity.FromPercent(percent))] : [];
    }
}
