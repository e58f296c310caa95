using CsCheck;
using StudioBot.Craft.Air;
using StudioBot.Craft.Tests.Whole;

namespace StudioBot.Craft.Tests.Air;

public sealed class DewPointTests
{
    [Fact]
    public void Dry_air_has_no_dew_point() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => DewPoint.Of(Rooms.Of(20, 0)));

    [Fact]
    public void Wet_air_is_at_its_dew_point() => Assert.Equal(18, DewPoint.Of(Rooms.Of(18, 100)).Celsius, 9);

    [Fact]
    public void Cooled_to_its_dew_point_air_is_full() =>
        Gen.Select(Gen.Double[18, 40], Gen.Double[40, 100]).Sample((celsius, percent) =>
        {
            var air = Rooms.Of(celsius, percent);
            return Math.Abs(air.At(DewPoint.Of(air)).Humidity.Percent - 100) < 1e-6;
        });

    [Fact]
    public void Three_points_of_humidity_move_it_by_two_thirds_of_a_degree()
    {
        // Common practice: a hygrometer is good to ±3 %, which is about 0.7 °C at the usual humidities.
        var moved = DewPoint.Of(Rooms.Of(20, 73)).Celsius - DewPoint.Of(Rooms.Of(20, 70)).Celsius;

        Assert.Equal(0.7, moved, 0.1);
    }
}
