using StudioBot.Chat.Tests.Support;
using StudioBot.Craft.Units;

namespace StudioBot.Chat.Tests.Asking;

public sealed class ConvertCommandTests
{
    [Theory]
    [InlineData("convert 8 fl oz to ml", "236.6 ml")] // US fl oz 29.5735 mL, 16 CFR 500.19
    [InlineData("convert 4 oz to g", "113.4 g")] // 28.3495 g, 16 CFR 500.19
    [InlineData("convert 1 lb to g", "453.6 g")] // 16 CFR 500.19
    [InlineData("convert 18 in to cm", "45.72 cm")] // 16 CFR 500.19
    [InlineData("convert 1 tbsp to tsp", "3 tsp")]
    [InlineData("convert 70F to C", "21.1 °C")] // (70 − 32)/1.8
    [InlineData("convert 3 scoops to ml", "60 ml")] // the studio's scoop of 20 mL
    public void A_unit_in_another(string words, string answer) =>
        Assert.Contains($"= {answer}", Phone.Says(words), StringComparison.Ordinal);

    [Fact]
    public void A_material_turns_mass_to_volume_by_a_density_that_is_shown()
    {
        var said = Phone.Says("convert 45 g resin A to ml"); // 45/1.13

        Assert.Contains("= 39.82 ml", said, StringComparison.Ordinal);
        Assert.Contains("1.13 g/ml", said, StringComparison.Ordinal);
        Assert.Contains("(Invented studio.)", said, StringComparison.Ordinal);
    }

    [Fact]
    public void A_powder_goes_by_the_spoon_it_was_weighed_with() => // 2 spoons of 2.2 g
        Assert.Contains("= 4.4 g", Phone.Says("convert 2 tsp gold mica to g"), StringComparison.Ordinal);

    [Fact]
    public void An_ounce_that_becomes_millilitres_is_a_fluid_one_and_said_so() =>
        Assert.Contains("oz taken as US fl oz", Phone.Says("convert 4 oz to ml"), StringComparison.Ordinal);

    [Fact]
    public void An_imperial_fluid_ounce_is_smaller() // 28.4130625 mL
    {
        var turn = Sample.Turn("convert 8 fl oz to ml") with { Who = new Speaker("Mira", true, UnitSystem.Imperial) };

        Assert.Contains("= 227.3 ml", Sample.Conversation.Answer(turn, Sample.Studio)!.PlainText, StringComparison.Ordinal);
    }

    [Fact]
    public void Drops_are_not_trusted() => // 20 drops of water a millilitre, USP <1101>
        Assert.Contains("vary by a factor of two", Phone.Says("convert 40 drops to ml"), StringComparison.Ordinal);

    [Theory]
    [InlineData("convert 8 fl oz to kg", "kg")]
    [InlineData("convert 45 g to ml", "ml")]
    [InlineData("convert 30 cm to ml", "ml")]
    public void Volume_and_mass_meet_in_a_material_only(string words, string word) => Assert.Equal(word, Phone.Blames(words));

    [Fact]
    public void Resin_is_never_spooned() => Assert.True(Sample.Answer("convert 45 g resin A to tsp")!.IsTrouble);

    [Theory]
    [InlineData("convert 8 fl oz to ml")]
    [InlineData("convert 45 g resin A to ml")]
    [InlineData("convert 10 g gold mica to tsp")]
    [InlineData("convert 70F to C")]
    public void It_fits_a_phone(string words) => Phone.Fits(words);

    [Theory]
    [InlineData("convert -570F to C")]      // absolute zero is -459.67 °F (SI Brochure, 9th ed.)
    [InlineData("convert -300C to F")]
    public void Colder_than_absolute_zero_is_said_to_be_so(string words) => Assert.True(Sample.Answer(words)!.IsTrouble);
}
