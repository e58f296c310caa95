using CsCheck;
using StudioBot.Craft.Costs;
using StudioBot.Craft.Units;

namespace StudioBot.Craft.Tests.Costs;

public sealed class ColourPriceTests
{
    [Fact]
    public void At_the_break_even_dose_both_cost_the_same() =>
        Gen.Select(Gen.Int[100, 5000], Gen.Int[100, 5000], Gen.Double[0.1, 5], Gen.Double[5, 50]).Sample(
            (cents, others, dose, per) =>
            {
                var one = Price(cents, 10, dose, 20);
                var other = Price(others, 50, 1, per);
                var even = Assert.IsType<Finding<Mass>.Found>(one.BreakEven(other)).Value;
                var cost = (other with { Dose = even }).PerHundredMillilitres;
                return Math.Abs(1 - cost / one.PerHundredMillilitres) < 1e-9m;
            });

    [Fact]
    public void What_costs_nothing_has_no_break_even() =>
        Assert.IsType<Finding<Mass>.None>(Price(500, 10, 1, 20).BreakEven(Price(0, 10, 1, 20)));

    [Fact]
    public void An_empty_pack_has_no_price_in_use() =>
        Assert.Throws<InvalidOperationException>(() => Price(500, 0, 1, 20).PerHundredMillilitres);

    [Fact]
    public void A_liquid_costs_its_share_of_the_bottle()
    {
        // 12.00 for 100 mL, 5 mL of it in 100 mL: a twentieth, 0.60
        var price = ColourPrice.Liquid(Money.From(12m), Ml(100), Ml(5), Ml(100));

        Assert.Equal(0.60m, price.PerHundredMillilitres);
    }

    private static Volume Ml(double millilitres) => Volume.FromMillilitres(millilitres);

    private static ColourPrice Price(long cents, double pack, double dose, double per) => new(
        new Money(cents), Mass.FromGrams(pack), Mass.FromGrams(dose), Volume.FromMillilitres(per));
}
