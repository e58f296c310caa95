using CsCheck;
using StudioBot.Craft.Flow;
using StudioBot.Craft.Units;

namespace StudioBot.Craft.Tests.Flow;

public sealed class BlendTests
{
    private static readonly Gen<(double Viscosity, double Amount)[]> Parts =
        Gen.Select(Gen.Double[1, 5000], Gen.Double[0.1, 100]).Array[1, 5];

    [Fact]
    public void A_blend_lies_between_its_thinnest_and_its_thickest_part() =>
        Parts.Sample(parts =>
        {
            var (low, high) = (parts.Min(part => part.Viscosity), parts.Max(part => part.Viscosity));
            var byVolume = Blend.LogLinear([.. parts.Select(part => (
                DynamicViscosity.FromMillipascalSeconds(part.Viscosity), Volume.FromMillilitres(part.Amount)))]);
            var byMass = Assert.IsType<Finding<KinematicViscosity>.Found>(Blend.Refutas([.. parts.Select(part => (
                KinematicViscosity.FromSquareMillimetresPerSecond(part.Viscosity), Mass.FromGrams(part.Amount)))]));
            Assert.InRange(byVolume.MillipascalSeconds, low * (1 - 1e-9), high * (1 + 1e-9));
            Assert.InRange(byMass.Value.SquareMillimetresPerSecond, low * (1 - 1e-9), high * (1 + 1e-9));
        });

    [Fact]
    public void A_liquid_thinner_than_the_rule_knows_has_no_number() =>
        Assert.Equal(
            NoFigure.OutOfRange,
            Assert.IsType<Finding<double>.None>(
                Blend.BlendingNumber(KinematicViscosity.FromSquareMillimetresPerSecond(0.2))).Kind);

    [Fact]
    public void Nothing_is_no_blend()
    {
        Assert.Throws<ArgumentException>(() => Blend.LogLinear([]));
        Assert.Throws<ArgumentException>(() => Blend.Refutas([]));
    }
}
