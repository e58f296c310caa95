using CsCheck;
using StudioBot.Craft.Mixing;
using StudioBot.Craft.Units;

namespace StudioBot.Craft.Tests.Mixing;

public sealed class MixDensityTests
{
    [Fact]
    public void A_mixture_lies_between_its_lightest_and_its_heaviest_part() =>
        Gen.Select(Gen.Double[1, 100], Gen.Double[0.8, 4.2]).Array[1, 5].Sample(parts =>
        {
            var density = MixDensity.Of([.. parts.Select(part =>
                new WeighedPart(Mass.FromGrams(part.Item1), Density.FromGramsPerMillilitre(part.Item2)))]);
            Assert.InRange(
                density.GramsPerMillilitre,
                parts.Min(part => part.Item2) * (1 - 1e-12),
                parts.Max(part => part.Item2) * (1 + 1e-12));
        });

    [Fact]
    public void Nothing_has_no_density() => Assert.Throws<ArgumentException>(() => MixDensity.Of([]));
}
