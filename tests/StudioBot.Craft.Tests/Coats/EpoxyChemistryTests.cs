using StudioBot.Craft.Coats;
using StudioBot.Craft.Units;

namespace StudioBot.Craft.Tests.Coats;

public sealed class EpoxyChemistryTests
{
    [Fact]
    public void A_filler_counts_in_mass_only()
    {
        // A formulator's rule: as much filler as resin doubles the grams that hold one equivalent.
        var mix = EpoxyChemistry.OfMixture(
            [(Mass.FromGrams(50), Weight(190)), (Mass.FromGrams(50), EquivalentWeight.Inert)]);

        Assert.Equal(380, mix.GramsPerEquivalent, 9);
    }

    [Fact]
    public void Filler_alone_does_not_cure() => Assert.Throws<ArgumentException>(
        () => EpoxyChemistry.OfMixture([(Mass.FromGrams(50), EquivalentWeight.Inert)]));

    [Theory]
    [InlineData(0)]
    [InlineData(-190)]
    [InlineData(double.NaN)]
    public void A_weight_is_above_zero(double value) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Weight(value));

    private static EquivalentWeight Weight(double value) => EquivalentWeight.FromGramsPerEquivalent(value);
}
