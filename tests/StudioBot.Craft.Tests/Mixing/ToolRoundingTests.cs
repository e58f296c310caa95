using CsCheck;
using StudioBot.Craft.Mixing;
using StudioBot.Craft.Units;

namespace StudioBot.Craft.Tests.Mixing;

public sealed class ToolRoundingTests
{
    private static readonly double[] Steps = [1, 2.5, 5, 20];

    private static readonly Gen<(MixRatio Ratio, Volume Need, Volume Step)> Cases = Gen.Select(
        Gen.Int[1, 100].Array[2, 5].Select(parts => new MixRatio([.. parts.Select(part => part / 4.0)])),
        Gen.Double[20, 3000].Select(Volume.FromMillilitres),
        Gen.Int[0, Steps.Length - 1].Select(index => Volume.FromMillilitres(Steps[index])));

    [Fact]
    public void Rounding_never_leaves_the_cup_short() =>
        Cases.Sample(given =>
        {
            var rounded = ToolRounding.Of(given.Ratio, given.Need, given.Step);
            Assert.True(rounded.Total.Millilitres >= given.Need.Millilitres * (1 - 1e-8));
        });

    [Fact]
    public void No_part_is_short_by_more_than_the_stated_error() =>
        Cases.Sample(given =>
        {
            var rounded = ToolRounding.Of(given.Ratio, given.Need, given.Step);
            var exact = Parts.Of(given.Ratio, given.Need);
            Assert.All(rounded.Parts.Zip(exact), pair => Assert.True(
                pair.First.Millilitres * (1 + rounded.WorstError) >= pair.Second.Millilitres * (1 - 1e-8)));
        });

    [Fact]
    public void Every_part_is_a_whole_number_of_steps() =>
        Cases.Sample(given => Assert.All(
            ToolRounding.Of(given.Ratio, given.Need, given.Step).Parts,
            part => Assert.Equal(Math.Max(1, Math.Round(part / given.Step)), part / given.Step, 1e-9)));

    [Fact]
    public void The_stated_error_is_the_worst_of_all_pairs() =>
        Cases.Sample(given =>
        {
            var rounded = ToolRounding.Of(given.Ratio, given.Need, given.Step);
            var parts = rounded.Parts.Zip(given.Ratio.Parts).ToList();
            var worst = parts.SelectMany(one => parts.Select(other =>
                Math.Abs(one.First / other.First / (one.Second / other.Second) - 1))).Max();
            Assert.Equal(worst, rounded.WorstError, 1e-9);
        });

    [Fact]
    public void Where_keeping_the_ratio_costs_too_much_the_parts_are_rounded_together()
    {
        // 7:5 at 60 mL on 20 mL steps: the ratio is kept first at 240 mL, four times the need.
        var rounded = ToolRounding.Of(new MixRatio([7, 5]), Volume.FromMillilitres(60), Volume.FromMillilitres(20));

        // 40 + 20: (2/1)/(7/5) − 1 = 0.4286, too far off for resin
        Assert.Equal([40, 20], rounded.Parts.Select(part => part.Millilitres));
        Assert.Equal(3.0 / 7, rounded.WorstError, 1e-9);
        Assert.False(rounded.DoesForResin);
    }

    [Fact]
    public void Within_a_tenth_more_the_least_error_is_taken()
    {
        // 7:5 at 100 mL on 5 mL steps: 60|40 is 7.1 % off, 60|45 5 %, 65|45 (13/9)/(7/5) − 1 = 2/63
        var rounded = ToolRounding.Of(new MixRatio([7, 5]), Volume.FromMillilitres(100), Volume.FromMillilitres(5));

        Assert.Equal([65, 45], rounded.Parts.Select(part => part.Millilitres));
        Assert.Equal(2.0 / 63, rounded.WorstError, 1e-9);
    }

    [Fact]
    public void The_ratio_can_be_kept_at_a_larger_total() =>
        Assert.Equal(
            [140, 100],
            ToolRounding.SmallestExact(
                new MixRatio([7, 5]), Volume.FromMillilitres(60), Volume.FromMillilitres(20))!
                .Parts.Select(part => Math.Round(part.Millilitres, 9)));

    [Fact]
    public void A_ratio_of_endless_places_is_never_on_the_step() =>
        Assert.Null(ToolRounding.SmallestExact(
            new MixRatio([Math.PI, 1]), Volume.FromMillilitres(60), Volume.FromMillilitres(5)));

    [Fact]
    public void Nothing_needed_is_nothing_to_round() =>
        Assert.Throws<ArgumentOutOfRangeException>(() =>
            ToolRounding.Of(new MixRatio([3, 1]), default, Volume.FromMillilitres(5)));
}
