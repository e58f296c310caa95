using StudioBot.Craft.Flow;
using StudioBot.Craft.Units;

namespace StudioBot.Craft.Tests.Flow;

/// <summary>Between 3:1 in the cold and 4:1 in the heat: common practice.</summary>
public sealed class MediumAdviceTests
{
    [Theory]
    [InlineData(8, 3.0)]
    [InlineData(15, 3.0)]
    [InlineData(21, 3.5)]
    [InlineData(27, 4.0)]
    [InlineData(35, 4.0)]
    public void In_the_cold_more_varnish_in_the_heat_less(double celsius, double parts) =>
        Assert.Equal(parts, MediumAdvice.Parts(MediumAdvice.UsualShare(Temperature.FromCelsius(celsius))), 6);

    [Fact]
    public void Between_them_it_follows_the_warmth() => Assert.InRange(
        MediumAdvice.Parts(MediumAdvice.UsualShare(Temperature.FromCelsius(18))), 3.1, 3.4);
}
