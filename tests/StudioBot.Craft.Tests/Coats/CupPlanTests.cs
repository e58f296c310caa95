using CsCheck;
using StudioBot.Craft.Coats;
using StudioBot.Craft.Units;

namespace StudioBot.Craft.Tests.Coats;

public sealed class CupPlanTests
{
    [Theory]
    [InlineData(300, 300, 1)]   // exactly full: not one more
    [InlineData(600, 300, 2)]
    [InlineData(600.1, 300, 3)]
    [InlineData(10, 300, 1)]
    public void Exactly_full_cups_do_not_add_one(double total, double safe, int cups) =>
        Assert.Equal(cups, Plan(total, safe).Cups);

    [Fact]
    public void A_total_that_is_so_many_cups_takes_so_many() =>
        Gen.Select(Gen.Int[1, 40], Gen.Double[50, 400]).Sample((cups, safe) => Plan(cups * safe, safe).Cups == cups);

    [Fact]
    public void The_scale_is_read_on_the_way()
    {
        // 2:1 by volume, 1.13 and 0.97 g/mL: 200 mL of A are 226.0 g, 100 mL of B 97.0 g.
        var plan = Plan(300, 300);

        Assert.Equal(226.0, plan.ScaleAfterA.Grams, 9);
        Assert.Equal(323.0, plan.ScaleAfterB.Grams, 9);
    }

    [Fact]
    public void All_cups_together_make_the_total() =>
        Gen.Select(Gen.Double[1, 5000], Gen.Double[50, 400]).Sample((total, safe) =>
        {
            var plan = Plan(total, safe);
            return Math.Abs(plan.Cups * plan.EachCup.Volume.Millilitres / total - 1) < 1e-9
                && plan.EachCup.Volume.Millilitres <= safe * (1 + 1e-6);
        });

    [Theory]
    [InlineData(900, 5, 60, false)]     // 3 cups: 9 min of mixing and 5 of pouring fit into half an hour
    [InlineData(900, 5, 20, true)]
    [InlineData(200, 30, 20, false)]    // one cup is not mixed ahead of any
    public void When_time_is_short_the_next_cup_waits(double total, double pouring, double working, bool oneByOne) =>
        Assert.Equal(oneByOne, Plan(total, 300).MixOneByOne(
            TimeSpan.FromMinutes(pouring), TimeSpan.FromMinutes(working)));

    [Fact]
    public void Nothing_needs_no_cup() => Assert.Throws<ArgumentOutOfRangeException>(() => Plan(0, 300));

    private static CupPlan Plan(double total, double safe) =>
        CupPlan.Of(Kits.Ordinary, Volume.FromMillilitres(total), Volume.FromMillilitres(safe));
}
