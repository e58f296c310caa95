using StudioBot.Craft.Mixing;
using StudioBot.Craft.Units;

namespace StudioBot.Craft.Tests.Mixing;

public sealed class WaterShareTests
{
    [Theory]
    [InlineData(30, false)] // 30 %: common practice
    [InlineData(31, true)]
    public void Water_beyond_a_third_stretches_the_binder(double millilitres, bool cautioned) =>
        Assert.Equal(
            cautioned,
            WaterShare.Of(Volume.FromMillilitres(millilitres), Volume.FromMillilitres(100))
                is Finding<double>.Cautioned);

    [Fact]
    public void Water_alone_is_no_paint() =>
        Assert.IsType<Finding<double>.None>(WaterShare.Of(Volume.FromMillilitres(10), default));
}
