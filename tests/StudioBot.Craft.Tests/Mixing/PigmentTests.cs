using StudioBot.Craft.Mixing;
using StudioBot.Craft.Units;

namespace StudioBot.Craft.Tests.Mixing;

public sealed class PigmentTests
{
    [Theory]
    // 100 g of medium, 45 % of it polymer of 1.15 g/mL: 39.13 mL dry. Mica 2.8 g/mL.
    [InlineData(70, false)] // 25 mL: 0.39
    [InlineData(75, true)] // 26.8 mL: 0.406, over the 0.40 that films bear (from memory)
    public void Too_much_powder_is_a_caution(double grams, bool cautioned) =>
        Assert.Equal(
            cautioned,
            Pigment.VolumeConcentration(Part(grams, 2.8), Part(100, 1.15), 0.45) is Finding<double>.Cautioned);

    [Fact]
    public void Nothing_dry_has_no_concentration() =>
        Assert.IsType<Finding<double>.None>(Pigment.VolumeConcentration(Part(0, 2.8), Part(100, 1.15), 0));

    private static WeighedPart Part(double grams, double density) =>
        new(Mass.FromGrams(grams), Density.FromGramsPerMillilitre(density));
}
