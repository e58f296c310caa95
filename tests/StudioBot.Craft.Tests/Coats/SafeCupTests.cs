using StudioBot.Craft.Coats;
using StudioBot.Craft.Units;

namespace StudioBot.Craft.Tests.Coats;

/// <summary>300 mL, 150 mL above 26 °C: common practice.</summary>
public sealed class SafeCupTests
{
    [Theory]
    [InlineData(20, 300)]
    [InlineData(26, 300)]
    [InlineData(27, 150)]
    public void A_warm_room_takes_smaller_cups(double celsius, double millilitres) =>
        Assert.Equal(millilitres, SafeCup.Of(Temperature.FromCelsius(celsius)).Millilitres, 9);

    [Fact]
    public void The_sheet_comes_first_then_its_sample()
    {
        var (limit, sample) = (Volume.FromMillilitres(500), Volume.FromMillilitres(120));
        var warm = Temperature.FromCelsius(30);

        Assert.Equal(limit, SafeCup.Of(warm, limit, sample));
        Assert.Equal(sample, SafeCup.Of(warm, null, sample));
    }
}
