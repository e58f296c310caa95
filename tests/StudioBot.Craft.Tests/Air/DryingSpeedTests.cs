using CsCheck;
using StudioBot.Craft.Air;
using StudioBot.Craft.Tests.Whole;

namespace StudioBot.Craft.Tests.Air;

public sealed class DryingSpeedTests
{
    [Fact]
    public void The_reference_room_is_one() =>
        Assert.Equal(new Finding<double>.Found(1), DryingSpeed.Of(Rooms.Of(23, 50)));

    [Fact]
    public void An_ordinary_room_is_three_quarters_of_it() =>
        // FAO-56 equation 11: 1.0522 over 1.4047 kPa.
        Assert.Equal(0.749, Assert.IsType<Finding<double>.Found>(DryingSpeed.Of(Rooms.Of(20, 55))).Value, 0.0005);

    [Theory]
    [InlineData(20, 98)]    // lacks 0.047 kPa
    [InlineData(15, 100)]
    public void In_damp_air_nothing_dries(double celsius, double percent) =>
        Assert.IsType<Finding<double>.None>(DryingSpeed.Of(Rooms.Of(celsius, percent)));

    [Fact]
    public void In_the_cold_water_leaves_but_the_film_may_not_close() =>
        Assert.IsType<Finding<double>.Cautioned>(DryingSpeed.Of(Rooms.Of(8, 50)));

    [Fact]
    public void More_humid_air_never_dries_faster() =>
        Gen.Select(Gen.Double[0, 50], Gen.Double[0, 100], Gen.Double[0, 100]).Sample((celsius, one, other) =>
            DryingSpeed.Rate(Rooms.Of(celsius, Math.Max(one, other)).Deficit)
            <= DryingSpeed.Rate(Rooms.Of(celsius, Math.Min(one, other)).Deficit));
}
