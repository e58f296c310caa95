using CsCheck;
using StudioBot.Craft.Mixing;
using StudioBot.Craft.Units;

namespace StudioBot.Craft.Tests.Mixing;

public sealed class AlligationTests
{
    private static readonly Volume Have = Volume.FromMillilitres(200);

    [Fact]
    public void What_is_added_brings_the_strength_wanted() =>
        Gen.Select(Gen.Double[0.01, 0.3], Gen.Double[0.35, 0.6], Gen.Double[0.65, 1]).Sample((weak, target, strong) =>
        {
            var added = Assert.IsType<Finding<Volume>.Found>(Alligation.Add(Have, weak, strong, target)).Value;
            var content = 200 * weak + added.Millilitres * strong;
            Assert.Equal(target, content / (Have + added).Millilitres, 1e-9);
        });

    [Theory]
    [InlineData(0.05, 0.16)] // weaker than what is there
    [InlineData(0.16, 0.16)] // only ever reached with an endless amount
    public void What_cannot_reach_the_strength_is_the_wrong_direction(double adding, double target)
    {
        var none = Assert.IsType<Finding<Volume>.None>(Alligation.Add(Have, 0.10, adding, target));

        Assert.Equal(NoFigure.WrongDirection, none.Kind);
    }

    [Fact]
    public void A_strength_already_there_needs_nothing() =>
        Assert.Equal(new Finding<Volume>.Found(default), Alligation.Add(Have, 0.10, 1, 0.10));

    [Fact]
    public void A_strength_is_a_share_of_the_whole() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Alligation.Add(Have, 10, 1, 0.16));

    [Fact]
    public void A_target_outside_the_stocks_has_no_parts() =>
        Assert.IsType<Finding<MixRatio>.None>(Alligation.Stocks(70, 20, 80));
}
