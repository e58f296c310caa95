using StudioBot.Craft.Units;

namespace StudioBot.Craft.Air;

/// <summary>The temperature at which air wets a surface.</summary>
public static class DewPoint
{
    /// <summary>The dew point of this air.</summary>
    /// <remarks>
    /// 237.3·L/(17.27 − L) with L = ln(e/0.6108), the inverse of FAO-56 equation 11. Below 0 °C it is frost that forms
    /// and the figure is an extrapolation, good enough to say that a surface is far from it.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">The humidity is zero: dry air has no dew point.</exception>
    public static Temperature Of(RoomAir air)
    {
        if (air.Humidity.Percent <= 0)
        {
            throw new ArgumentOutOfRangeException(nameof(air), "Dry air has no dew point.");
        }

        var l = Math.Log(air.Vapour.Kilopascals / 0.6108);
        return Temperature.FromCelsius(237.3 * l / (17.27 - l));
    }
}
