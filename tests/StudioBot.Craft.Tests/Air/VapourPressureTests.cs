using StudioBot.Craft.Air;
using StudioBot.Craft.Units;

namespace StudioBot.Craft.Tests.Air;

public sealed class VapourPressureTests
{
    [Theory]
    // FAO-56 Table 2.3
    [InlineData(10, 1.228)]
    [InlineData(20, 2.338)]
    [InlineData(25, 3.168)]
    [InlineData(30, 4.243)]
    public void Saturation_is_what_the_table_says(double celsius, double kilopascals) =>
        Assert.Equal(kilopascals, VapourPressure.Saturated(Temperature.FromCelsius(celsius)).Kilopascals, 0.0006);

    [Theory]
    [InlineData(-0.1)]
    [InlineData(50.1)]
    public void Beyond_its_range_there_is_no_figure(double celsius) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => VapourPressure.Saturated(Temperature.FromCelsius(celsius)));

    [Fact]
    public void The_mean_of_a_cold_and_a_warm_hour_is_above_the_pressure_of_their_mean_temperature()
    {
        // FAO-56: e_s bends upward, so averaging temperatures comes out too low.
        var mean = VapourPressure.Mean([Saturated(10), Saturated(30)]);

        Assert.True(mean > Saturated(20));
    }

    [Fact]
    public void A_mean_of_nothing_is_refused() => Assert.Throws<ArgumentException>(() => VapourPressure.Mean([]));

    private static VapourPressure Saturated(double celsius) =>
        VapourPressure.Saturated(Temperature.FromCelsius(celsius));
}
