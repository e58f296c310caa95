using StudioBot.Craft.Drying;
using StudioBot.Craft.Tests.Whole;
using StudioBot.Craft.Units;

namespace StudioBot.Craft.Tests.Drying;

public sealed class TwoStageTests
{
    [Theory]
    // Worked by hand from Kiil's diffusivity and packing: 998·h·(1 − φ) of water at 20 °C, 55 %.
    [InlineData(1, 9.5)]
    [InlineData(2, 21.1)]
    [InlineData(3, 34.9)]
    public void The_open_film_takes_a_little_more_than_in_proportion(double millimetres, double hours)
    {
        var time = new TwoStage().In(Rooms.Of(20, 55), Length.FromMillimetres(millimetres));

        Assert.Equal(hours, Assert.IsType<Finding<TimeSpan>.Found>(time).Value.TotalHours, 0.06);
    }

    [Fact]
    public void In_wet_air_there_is_no_time() =>
        Assert.IsType<Finding<TimeSpan>.None>(new TwoStage().In(Rooms.Of(20, 100), Length.FromMillimetres(1)));

    [Fact]
    public void A_film_already_packed_is_not_wet() => Assert.Throws<InvalidOperationException>(
        () => new TwoStage(SolidsByVolume: 0.8).In(Rooms.Of(20, 50), Length.FromMillimetres(1)));
}
