using CsCheck;
using StudioBot.Craft.Mixing;
using StudioBot.Craft.Units;

namespace StudioBot.Craft.Tests.Mixing;

public sealed class TopUpTests
{
    private static readonly MixRatio ThreeToOne = new([3, 1]);

    [Fact]
    public void A_completed_cup_has_its_ratio_and_lost_nothing() =>
        Gen.Select(Gen.Double[0.1, 10], Gen.Double[0.1, 10], Gen.Double[1, 300], Gen.Double[1, 300])
            .Sample((a, b, first, second) =>
            {
                var done = Found(TopUp.Complete(new MixRatio([a, b]), [Ml(first), Ml(second)]));
                var ends = (first + done.Add[0].Millilitres, second + done.Add[1].Millilitres);
                Assert.Equal(a / b, ends.Item1 / ends.Item2, a / b * 1e-9);
                Assert.Equal(done.Total.Millilitres, ends.Item1 + ends.Item2, done.Total.Millilitres * 1e-9);
                Assert.Contains(done.Add, add => add.Millilitres < 1e-9);
            });

    [Fact]
    public void An_empty_cup_is_split_instead() =>
        Assert.IsType<Finding<Completion<Volume>>.None>(TopUp.Complete(ThreeToOne, [Ml(0), Ml(0)]));

    [Fact]
    public void A_cup_that_would_overflow_is_first_emptied_in_part()
    {
        // 60 + 40 at 3:1 wants 120 + 40 = 160 mL. For 80 mL half of the 100 is taken out, then half of 60 added:
        // 30 + 20 left, + 30 = 60 + 20. Mass balance.
        var cautioned = Assert.IsType<Finding<Completion<Volume>>.Cautioned>(
            TopUp.Complete(ThreeToOne, [Ml(60), Ml(40)], most: Ml(80)));

        Assert.Equal(50, cautioned.Value.TakeOut.Millilitres, 1e-9);
        Assert.Equal(30, cautioned.Value.Add[0].Millilitres, 1e-9);
        Assert.Equal(0, cautioned.Value.Add[1].Millilitres, 1e-9);
        Assert.Equal(80, cautioned.Value.Total.Millilitres, 1e-9);
    }

    [Fact]
    public void A_cup_is_stretched_to_what_is_wanted()
    {
        // 80 mL of A at 2:1, 300 mL wanted: 200 + 100, so 120 of A and 100 of B are missing. Proportion.
        var done = Found(TopUp.Complete(new MixRatio([2, 1]), [Ml(80), Ml(0)], least: Ml(300)));

        Assert.Equal(120, done.Add[0].Millilitres, 1e-9);
        Assert.Equal(100, done.Add[1].Millilitres, 1e-9);
        Assert.Equal(300, done.Total.Millilitres, 1e-9);
    }

    [Fact]
    public void Resin_is_completed_by_mass()
    {
        // 100:45 with 100 g and 40 g: 5 g more of the second
        var done = Assert.IsType<Finding<Completion<Mass>>.Found>(
            TopUp.Complete(new MixRatio([100, 45], RatioBy.Mass), [Mass.FromGrams(100), Mass.FromGrams(40)]));

        Assert.Equal(5, done.Value.Add[1].Grams, 1e-9);
    }

    [Fact]
    public void An_amount_stands_for_each_part() =>
        Assert.Throws<ArgumentException>(() => TopUp.Complete(ThreeToOne, [Ml(60)]));

    private static Completion<Volume> Found(Finding<Completion<Volume>> finding) =>
        Assert.IsType<Finding<Completion<Volume>>.Found>(finding).Value;

    private static Volume Ml(double value) => Volume.FromMillilitres(value);
}
