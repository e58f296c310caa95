using CsCheck;
using StudioBot.Craft.Coats;
using StudioBot.Craft.Mixing;
using StudioBot.Craft.Units;

namespace StudioBot.Craft.Tests.Coats;

public sealed class ResinTests
{
    [Fact]
    public void Two_to_one_by_volume_is_not_two_to_one_on_the_scale() =>
        // mass = volume × density: 100·0.97/(2·1.13)
        Assert.Equal(42.92, Kit(2, 1, RatioBy.Volume).MassOfBPer100A, 0.005);

    [Fact]
    public void The_parts_always_make_the_whole() =>
        Gen.Select(Gen.Double[0.5, 100], Gen.Double[0.5, 100], Gen.Double[1, 5000], Gen.Bool).Sample(
            (a, b, total, mass) =>
        {
            var kit = Kit(a, b, mass ? RatioBy.Mass : RatioBy.Volume);
            return Math.Abs(kit.Split(Volume.FromMillilitres(total)).Volume.Millilitres / total - 1) < 1e-9
                && Math.Abs(kit.Split(Mass.FromGrams(total)).Mass.Grams / total - 1) < 1e-9;
        });

    [Fact]
    public void A_ratio_by_mass_holds_on_the_scale()
    {
        var parts = Kit(100, 45, RatioBy.Mass).Split(Mass.FromGrams(290));

        Assert.Equal(200, parts.PartA.Mass.Grams, 9);
        Assert.Equal(90, parts.PartB.Mass.Grams, 9);
    }

    [Fact]
    public void From_either_part_comes_the_same_mix()
    {
        var kit = Kit(2, 1, RatioBy.Volume);

        Assert.Equal(kit.WithA(Volume.FromMillilitres(120)), kit.WithB(Volume.FromMillilitres(60)));
    }

    [Fact]
    public void Three_parts_are_no_resin() => Assert.Throws<ArgumentException>(
        () => new Resin(new MixRatio([1, 1, 1]), Density(1.1), Density(1)));

    private static Resin Kit(double a, double b, RatioBy by) =>
        new(new MixRatio([a, b], by), Density(1.13), Density(0.97));

    private static Density Density(double value) => StudioBot.Craft.Units.Density.FromGramsPerMillilitre(value);
}
