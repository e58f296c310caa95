using StudioBot.Craft.Drying;
using StudioBot.Craft.Units;

namespace StudioBot.Craft.Tests.Drying;

public sealed class WaterContentTests
{
    [Fact]
    public void A_film_of_an_unknown_mix_is_three_fifths_water() =>
        // Common practice: 0.6 g a millilitre.
        Assert.Equal(150, WaterContent.OfFilm(Volume.FromMillilitres(250)).Grams, 9);

    [Fact]
    public void Water_and_what_stays_make_the_mix()
    {
        // ISO 3251: non-volatile matter is what stays, by mass.
        WetPart[] parts = [new(Mass.FromGrams(80), 0.45), new(Mass.FromGrams(30), 0), new(Mass.FromGrams(5), 1)];

        Assert.Equal(115, WaterContent.Of(parts).Grams + 115 * WaterContent.NonVolatile(parts), 9);
    }

    [Fact]
    public void A_mix_of_nothing_has_no_share() =>
        Assert.Throws<ArgumentException>(() => WaterContent.NonVolatile([]));

    [Theory]
    [InlineData(-0.1)]
    [InlineData(1.1)]
    [InlineData(double.NaN)]
    public void A_part_keeps_a_share_of_its_mass(double share) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => new WetPart(Mass.FromGrams(1), share));
}
