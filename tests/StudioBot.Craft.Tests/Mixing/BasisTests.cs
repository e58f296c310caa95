using CsCheck;
using StudioBot.Craft.Mixing;
using StudioBot.Craft.Units;

namespace StudioBot.Craft.Tests.Mixing;

public sealed class BasisTests
{
    [Fact]
    public void Two_to_one_by_volume_is_not_two_to_one_by_mass()
    {
        // 0.97/(2·1.13) = 42.9 to 100: m = ρ·V
        var byMass = Basis.ByMass(new MixRatio([2, 1]), Densities(1.13, 0.97));

        Assert.Equal(RatioBy.Mass, byMass.By);
        Assert.Equal(42.92, 100 * byMass.Parts[1] / byMass.Parts[0], 0.005);
    }

    [Fact]
    public void There_and_back_is_the_same_mixture() =>
        Gen.Select(Gen.Double[0.1, 10], Gen.Double[0.5, 4], Gen.Double[0.5, 4]).Sample((part, one, other) =>
        {
            var densities = Densities(one, other);
            var back = Basis.ByVolume(Basis.ByMass(new MixRatio([part, 1]), densities), densities);
            Assert.Equal(RatioBy.Volume, back.By);
            Assert.Equal(part, back.Parts[0] / back.Parts[1], part * 1e-12);
        });

    [Fact]
    public void A_density_is_needed_for_each_part() =>
        Assert.Throws<ArgumentException>(() => Basis.ByMass(new MixRatio([2, 1]), Densities(1.13)));

    private static Density[] Densities(params double[] values) =>
        [.. values.Select(Density.FromGramsPerMillilitre)];
}
