using CsCheck;
using StudioBot.Craft.Mixing;
using StudioBot.Craft.Units;

namespace StudioBot.Craft.Tests.Mixing;

public sealed class PartsTests
{
    private static readonly Gen<MixRatio> Ratios =
        Gen.Double[0.1, 20].Array[2, 6].Select(parts => new MixRatio(parts));

    [Fact]
    public void The_parts_make_the_whole() =>
        Gen.Select(Ratios, Gen.Double[0, 5000]).Sample((ratio, total) =>
        {
            var parts = Parts.Of(ratio, Volume.FromMillilitres(total));
            Assert.Equal(total, parts.Sum(part => part.Millilitres), total * 1e-12 + 1e-12);
        });

    [Fact]
    public void The_whole_that_goes_with_a_part_has_that_part() =>
        Gen.Select(Ratios, Gen.Double[1, 500]).Sample((ratio, first) =>
        {
            var whole = Parts.WholeFrom(ratio, 0, Volume.FromMillilitres(first));
            Assert.Equal(first, Parts.Of(ratio, whole)[0].Millilitres, first * 1e-12);
        });

    [Fact]
    public void A_ratio_by_mass_does_not_split_a_volume() =>
        Assert.Throws<ArgumentException>(() =>
            Parts.Of(new MixRatio([100, 45], RatioBy.Mass), Volume.FromMillilitres(100)));
}
