using StudioBot.Craft.Units;

namespace StudioBot.Craft.Tests.Units;

public sealed class UnitNamesTests
{
    [Theory]
    // the same word is another size to another person
    [InlineData("fl oz", UnitOrigin.Us, 29.5735295625)] // US unit tables
    [InlineData("fl oz", UnitOrigin.Imperial, 28.4130625)] // imperial unit tables
    [InlineData("pint", UnitOrigin.Us, 473.176473)] // 16 US fluid ounces
    [InlineData("pint", UnitOrigin.Imperial, 568.26125)] // 20 imperial fluid ounces
    [InlineData("tsp", UnitOrigin.Us, 4.92892159375)] // US unit tables
    [InlineData("tsp", UnitOrigin.Metric, 5)] // 21 CFR 101.9
    [InlineData("tablespoons", UnitOrigin.Metric, 15)] // 21 CFR 101.9
    // nobody measures paint in imperial spoons
    [InlineData("tsp", UnitOrigin.Imperial, 5)]
    // a word that names its system is not asked whose it is
    [InlineData("imperial pint", UnitOrigin.Us, 568.26125)]
    [InlineData("Metric Teaspoons", UnitOrigin.Us, 5)]
    [InlineData("US fl oz", UnitOrigin.Imperial, 29.5735295625)]
    // what every studio has
    [InlineData("mL", UnitOrigin.Us, 1)]
    [InlineData("Litres", UnitOrigin.Imperial, 1000)]
    [InlineData("scoops", UnitOrigin.Us, 20)] // common practice
    [InlineData("drops", UnitOrigin.Us, 0.05)] // USP <1101>
    public void A_measure_is_read_as_the_person_means_it(string word, UnitOrigin system, double millilitres)
    {
        var unit = Assert.IsType<UnitName.OfVolume>(UnitNames.Find(word, system));

        Assert.Equal(millilitres, unit.One.Millilitres, 1e-9);
    }

    [Theory]
    [InlineData("cup")] // cups differ
    [InlineData("jug")]
    public void A_vague_measure_is_no_unit(string word) => Assert.Null(UnitNames.Find(word));

    [Fact]
    public void An_ounce_alone_is_a_mass() => Assert.IsType<UnitName.OfMass>(UnitNames.Find("oz"));

    [Fact]
    public void Only_a_drop_is_vague() =>
        Assert.Equal([UnitNames.Drop], UnitNames.All.Where(unit => unit.Spread > 0));

    [Fact]
    public void No_word_means_two_things_to_one_person() =>
        Assert.All(
            UnitNames.All.SelectMany(unit => unit.Spellings.Select(word => (word, unit.System))).GroupBy(pair => pair),
            pairs => Assert.Single(pairs));
}
