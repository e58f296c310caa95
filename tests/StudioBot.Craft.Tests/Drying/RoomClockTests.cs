using CsCheck;
using StudioBot.Craft.Drying;
using StudioBot.Craft.Tests.Whole;

namespace StudioBot.Craft.Tests.Drying;

public sealed class RoomClockTests
{
    private static readonly DateTimeOffset Poured = new(2026, 3, 2, 18, 0, 0, TimeSpan.Zero);

    [Fact]
    public void In_the_reference_room_it_runs_as_on_the_wall() =>
        Assert.Equal(12, Clock((0, 23, 50)).Elapsed(Poured, After(12)).Equivalent.TotalHours, 6);

    [Fact]
    public void In_wet_air_it_stands_still() =>
        Assert.Equal(0, Clock((0, 20, 100)).Elapsed(Poured, After(12)).Equivalent.TotalHours, 6);

    [Fact]
    public void A_reading_holds_for_a_day_then_the_mean_stands_in()
    {
        // 23 °C and 50 % lacks as much as the reference room, 100 % lacks nothing; their mean is half of it.
        var clock = Clock((0, 23, 100), (30, 23, 50));
        var time = clock.Elapsed(Poured, After(30));

        Assert.Equal(6 * 0.5, time.Equivalent.TotalHours, 6);
        Assert.Equal(6, time.Unread.TotalHours, 6);
    }

    [Fact]
    public void Before_the_first_reading_the_mean_stands_in()
    {
        var time = Clock((10, 23, 50)).Elapsed(Poured, After(12));

        Assert.Equal(12, time.Equivalent.TotalHours, 6);
        Assert.Equal(10, time.Unread.TotalHours, 6);
    }

    [Fact]
    public void Without_a_reading_an_ordinary_room_is_assumed()
    {
        // Common practice: 20 °C and 55 %, which is 0.749 of the reference room.
        var clock = new RoomClock([]);

        Assert.Equal(0.749 * 24, clock.Elapsed(Poured, After(24)).Equivalent.TotalHours, 0.02);
        Assert.Equal(TimeSpan.FromHours(24), clock.Elapsed(Poured, After(24)).Unread);
        Assert.Equal(PaceGrounds.Assumed, clock.PaceAt(Poured).Grounds);
    }

    [Fact]
    public void The_pace_is_the_last_weeks_mean()
    {
        var pace = Clock((0, 23, 100), (24 * 10, 23, 50), (24 * 11, 23, 75)).PaceAt(After(24 * 12));

        Assert.Equal(0.75, pace.Rate, 9);
        Assert.Equal(PaceGrounds.LastWeek, pace.Grounds);
    }

    [Fact]
    public void With_no_reading_of_the_last_week_all_of_them_count()
    {
        var pace = Clock((0, 23, 100), (24, 23, 50)).PaceAt(After(24 * 30));

        Assert.Equal(0.5, pace.Rate, 9);
        Assert.Equal(PaceGrounds.OlderReadings, pace.Grounds);
    }

    [Fact]
    public void Readings_still_to_come_do_not_set_the_pace() =>
        Assert.Equal(1, Clock((0, 23, 50), (48, 23, 100)).PaceAt(After(24)).Rate, 9);

    [Fact]
    public void The_parts_of_a_stretch_make_the_whole() =>
        Gen.Select(Gen.Double[0, 200], Gen.Double[0, 200], Gen.Double[0, 200]).Sample((a, b, c) =>
        {
            var clock = Clock((20, 18, 70), (30, 23, 45), (90, 16, 80), (130, 25, 40));
            double[] at = [a, b, c];
            Array.Sort(at);
            var parts = clock.Elapsed(After(at[0]), After(at[1])).Equivalent
                + clock.Elapsed(After(at[1]), After(at[2])).Equivalent;
            return (parts - clock.Elapsed(After(at[0]), After(at[2])).Equivalent).Duration() < TimeSpan.FromSeconds(1);
        });

    [Fact]
    public void More_humid_air_never_dries_faster() =>
        Gen.Select(Gen.Double[5, 35], Gen.Double[0, 100], Gen.Double[0, 100], Gen.Double[0, 60])
            .Sample((celsius, one, other, hours) =>
                Clock((0, celsius, Math.Max(one, other))).Elapsed(Poured, After(hours)).Equivalent
                <= Clock((0, celsius, Math.Min(one, other))).Elapsed(Poured, After(hours)).Equivalent);

    [Fact]
    public void Time_does_not_run_backwards() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Clock((0, 20, 50)).Elapsed(After(1), Poured));

    private static RoomClock Clock(params (double Hour, double Celsius, double Percent)[] readings) =>
        new(readings.Select(one => new RoomReading(After(one.Hour), Rooms.Of(one.Celsius, one.Percent))));

    private static DateTimeOffset After(double hours) => Poured + TimeSpan.FromHours(hours);
}
