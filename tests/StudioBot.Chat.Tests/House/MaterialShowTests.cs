using StudioBot.Chat.Tests.Asking;
using StudioBot.Chat.Tests.Support;
using StudioBot.Craft.Costs;
using StudioBot.Craft.Units;
using StudioBot.Records.Materials;

namespace StudioBot.Chat.Tests.House;

public sealed class MaterialShowTests
{
    [Fact]
    public void A_material_shows_what_is_set_and_what_is_not()
    {
        var said = Phone.Says("material white");        // the invented studio: 1.30 g/ml, 55 % solids, packs 9.90 and 17.50

        Assert.StartsWith("White: a liquid", said, StringComparison.Ordinal);
        Assert.Matches(@"Density +1\.3 g/ml", said);
        Assert.Matches("Stays when dry +55 %", said);
        Assert.Matches("Low at +300 ml", said);
        Assert.Matches(@"Pack of 1000 ml +17\.50 EUR", said);
        Assert.Contains("Not set: empty bottle, keeps once open, order takes.", said, StringComparison.Ordinal);
    }

    [Fact]
    public void A_powder_shows_its_spoon() => Assert.Matches(@"Level teaspoon +2\.2 g", Phone.Says("material blue mica"));

    [Fact]
    public void What_nobody_would_set_is_not_missed()
    {
        Assert.DoesNotContain("density", Phone.Says("material cup"), StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain("order takes", Phone.Says("material medium"), StringComparison.Ordinal);
    }

    [Fact]
    public void Where_all_is_set_it_says_so()
    {
        var studio = new StockedStudio();
        var white = studio.Write(session => session.Materials.Add(new NewMaterial("white", MaterialForm.Liquid)
        {
            Density = Density.FromGramsPerMillilitre(1.3),
            SolidsShare = 0.55,
            Low = StockedStudio.Ml(300),
            Packs = [new Pack(StockedStudio.Ml(500), new Money(990))],
        }));
        studio.Write(session => session.Materials.Change(
            white with { Bottle = Mass.FromGrams(42), ShelfLife = TimeSpan.FromDays(1), LeadTime = TimeSpan.FromDays(5) },
            studio.Said(session, "material", 20)));

        var said = studio.Says("material white");

        Assert.Matches("Empty bottle +42 g", said);
        Assert.Matches(@"Keeps once open +1 day\s", said);
        Assert.Matches("Order takes +5 days", said);
        Assert.Contains("All is set.", said, StringComparison.Ordinal);
    }

    [Fact]
    public void Without_a_name_it_lists_when_each_is_low()
    {
        var said = Phone.Says("limit");

        Assert.StartsWith("22 materials, and when each is low", said, StringComparison.Ordinal);
        Assert.Matches("white +at 300 ml", said);
    }

    [Fact]
    public void What_is_never_low_says_so()
    {
        var studio = new StockedStudio();
        studio.Liquid("white");

        Assert.Matches("white +never", studio.Says("limit"));
    }

    [Fact]
    public void A_studio_without_materials_says_so() =>
        Assert.StartsWith("No material was named here yet", new StockedStudio().Says("material"), StringComparison.Ordinal);

    [Theory]
    [InlineData("material")]
    [InlineData("material page 2")]
    [InlineData("material white")]
    [InlineData("material gold mica")]
    [InlineData("material mica")]
    [InlineData("material resin A")]
    public void It_fits_a_phone(string words) => Phone.Fits(words);
}
