using StudioBot.Craft.Air;
using StudioBot.Craft.Drying;
using StudioBot.Craft.Units;

namespace StudioBot.Craft.Tests.Whole.ReadyTruth;

/// <summary>A studio's air hour by hour, and what its makers read of it on some evenings.</summary>
/// <remarks>
/// Means, swings, wander and readers are of our making: rooms from 17 to 24 °C and 40 to 65 % (common practice). The
/// pull of the air is FAO-56 equation 11, written out here so that the truth does not lean on what it judges.
/// </remarks>
internal sealed class TrueRoom
{
    /// <summary>The moment the hours are counted from; any evening will do.</summary>
    public static readonly DateTimeOffset Start = new(2026, 1, 1, 20, 0, 0, TimeSpan.Zero);

    private const int HoursADay = 24;
    private const double WanderHours = 120;         // in five days a spell of weather falls to 37 %
    private const double Warmest = 15;              // the hour of the afternoon when the swing is at its top
    private const double ReadEvenings = 0.6;

    private readonly double[] _pull;
    private readonly double[] _percent;
    private readonly List<RoomReading> _readings = [];

    /// <summary>A room of so many days.</summary>
    public TrueRoom(Dice dice, int days)
    {
        double celsius = dice.Between(17, 24), percent = dice.Between(40, 65);
        double swing = dice.Between(0.5, 3), against = dice.Between(1, 7);
        double hygrometer = dice.About(3), warm = dice.About(1.5), damp = dice.About(6);
        var kept = Math.Exp(-1 / WanderHours);
        var fresh = Math.Sqrt(1 - kept * kept);
        _pull = new double[days * HoursADay];
        _percent = new double[_pull.Length];
        for (var hour = 0; hour < _pull.Length; hour++)
        {
            warm = kept * warm + dice.About(1.5 * fresh);
            damp = kept * damp + dice.About(6 * fresh);
            var cycle = Math.Cos(2 * Math.PI * (Start.Hour + hour - Warmest) / HoursADay);
            var t = celsius + warm + swing * cycle;
            _percent[hour] = Math.Clamp(percent + damp - against * cycle, 5, 97);
            _pull[hour] = 610.8 * Math.Exp(17.27 * t / (t + 237.3)) * (1 - _percent[hour] / 100);
            if (hour % HoursADay == 0 && dice.Happens(ReadEvenings))
            {
                _readings.Add(Read(hour, t + dice.About(0.5), _percent[hour] + hygrometer + dice.About(2)));
            }
        }
    }

    /// <summary>What the air lacks in this hour, Pa.</summary>
    public double Pull(int hour) => _pull[hour];

    /// <summary>How humid it is in this hour, 0 to 1.</summary>
    public double Humidity(int hour) => _percent[hour] / 100;

    /// <summary>What was read from one evening to another, the last included.</summary>
    public IEnumerable<RoomReading> Readings(int fromDay, int toDay) => _readings
        .SkipWhile(reading => reading.At < Start.AddDays(fromDay))
        .TakeWhile(reading => reading.At <= Start.AddDays(toDay));

    private static RoomReading Read(int hour, double celsius, double percent) => new(
        Start.AddHours(hour),
        new RoomAir(
            Temperature.FromCelsius(Math.Clamp(celsius, 1, 49)),
            RelativeHumidity.FromPercent(Math.Clamp(percent, 1, 99))));
}
