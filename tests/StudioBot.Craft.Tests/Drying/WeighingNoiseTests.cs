using StudioBot.Craft.Drying;
using StudioBot.Craft.Units;

namespace StudioBot.Craft.Tests.Drying;

public sealed class WeighingNoiseTests
{
    [Fact]
    public void A_scale_nobody_tested_is_off_by_a_division() =>
        Assert.Equal(0.1, WeighingNoise.Of(Grams(0.1)).Grams, 9);

    [Fact]
    public void No_scale_is_better_than_half_a_division() =>
        Assert.Equal(0.5, WeighingNoise.Of(Grams(1), scale: Grams(0.01)).Grams, 9);

    [Fact]
    public void Paint_and_wood_breathe() =>
        // Common practice: 0.05 % of 240 g of paint and 0.03 % of 300 g of wood: √(0.1² + 0.12² + 0.09²).
        Assert.Equal(0.18028, WeighingNoise.Of(Grams(0.1), Grams(240), Grams(300)).Grams, 5);

    [Fact]
    public void A_scale_has_divisions() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => WeighingNoise.Of(Grams(0)));

    private static Mass Grams(double grams) => Mass.FromGrams(grams);
}
