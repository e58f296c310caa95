using StudioBot.Craft.Drying;
using StudioBot.Craft.Units;

namespace StudioBot.Craft.Tests.Drying;

/// <summary>0.1 % of the paint's mass in 24 h, from memory of how standards dry to constant mass.</summary>
public sealed class ConstantMassTests
{
    [Theory]
    [InlineData(502.0, 501.8, true)]    // 0.2 g of 240 g of paint
    [InlineData(502.0, 501.7, false)]   // 0.3 g: the line is 0.24 g
    [InlineData(502.0, 502.3, false)]   // a rise is no standstill either
    public void A_big_piece_is_judged_after_a_day(double first, double second, bool still) =>
        Assert.Equal(
            new Finding<bool>.Found(still),
            ConstantMass.Of(Grams(first), Grams(second), TimeSpan.FromDays(1), Grams(240), Grams(0.1)));

    [Fact]
    public void A_coaster_on_a_kitchen_scale_takes_three_days()
    {
        Assert.IsType<Finding<bool>.None>(
            ConstantMass.Of(Grams(60), Grams(60), TimeSpan.FromDays(1), Grams(30), Grams(0.1)));
        Assert.IsType<Finding<bool>.Found>(
            ConstantMass.Of(Grams(60), Grams(60), TimeSpan.FromDays(3), Grams(30), Grams(0.1)));
    }

    private static Mass Grams(double grams) => Mass.FromGrams(grams);
}
