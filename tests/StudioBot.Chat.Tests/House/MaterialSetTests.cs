using StudioBot.Chat.Tests.Support;
using StudioBot.Records.Materials;

namespace StudioBot.Chat.Tests.House;

/// <summary>Figures are worked by hand from the invented studio's shelf.</summary>
public sealed class MaterialSetTests : IDisposable
{
    private readonly LiveStudio studio = LiveStudio.Sample();

    public void Dispose() => studio.Dispose();

    [Fact]
    public void A_low_level_is_set_and_what_it_was_is_said()
    {
        Assert.Equal("White: low level 400 ml, was 300 ml.\n820 ml on the shelf.", studio.Tells("material white low 400 ml"));
        Assert.Equal(400, ((Amount.ByVolume)Known("white").Low!).Volume.Millilitres);
    }

    [Fact]
    public void A_low_level_is_kept_as_the_material_is_measured()
    {
        studio.Tells("limit gold mica 25g");
        studio.Tells("material cups low 50");

        Assert.Equal(25, ((Amount.ByMass)Known("gold mica").Low!).Mass.Grams);
        Assert.Equal(50, ((Amount.ByCount)Known("cup").Low!).Count);
        studio.Refuses("material cups low 50 ml");
        studio.Refuses("material white low 50");
    }

    [Fact]
    public void A_liquids_density_is_its_own() =>
        Assert.StartsWith("White: density 1.25 g/ml, was 1.3.", studio.Tells("material white density 1.25"), StringComparison.Ordinal);

    [Fact]
    public void A_powders_density_is_how_it_lies_in_a_spoon()
    {
        // 0.45 g/ml × 4.92892 ml (a US teaspoon, 16 CFR 500.19) = 2.218 g; the grains keep their own
        Assert.StartsWith("Silver mica: a level teaspoon is 2.2 g.", studio.Tells("material silver mica density 0.45"), StringComparison.Ordinal);
        Assert.Equal(2.218, Known("silver mica").GramsPerTeaspoon!.Value.Grams, 3);
        Assert.Equal(2.8, Known("silver mica").Density!.Value.GramsPerMillilitre);
    }

    [Fact]
    public void Spoon_bottle_shelf_life_and_lead_time_are_set()
    {
        Assert.StartsWith("Gold mica: a level teaspoon is 2.5 g, was 2.2 g.", studio.Tells("material gold mica spoon 2.5 g"), StringComparison.Ordinal);
        Assert.StartsWith("White: its empty bottle weighs 62 g.", studio.Tells("material white bottle 62 g"), StringComparison.Ordinal);
        Assert.StartsWith("White: once opened it keeps 180 days.", studio.Tells("material white keeps 180 days"), StringComparison.Ordinal);
        Assert.StartsWith("White: an order takes 7 days.", studio.Tells("material white delivery 1 week"), StringComparison.Ordinal);

        var white = Known("white");
        Assert.Equal((62, 180, 7), (white.Bottle!.Value.Grams, white.ShelfLife!.Value.Days, white.LeadTime!.Value.Days));
        Assert.Equal(2.5, Known("gold mica").GramsPerTeaspoon!.Value.Grams);
    }

    [Fact]
    public void A_pack_takes_the_place_of_one_of_its_size()
    {
        Assert.StartsWith("White: a pack of 500 ml costs 10.40, was 9.90.", studio.Tells("material white pack 500 ml 10.40"), StringComparison.Ordinal);
        studio.Tells("material white pack 250 ml 6.00");

        Assert.Equal([600, 1040, 1750], Known("white").Packs.Select(pack => pack.Price!.Value.Cents));
    }

    [Theory]
    [InlineData("material white spoon 2.2 g", "is no powder")]
    [InlineData("material cups bottle 60 g", "is counted")]
    [InlineData("material gold mica 2.2 g per spoon", "takes its figure behind it")]
    [InlineData("material white 300", "has no unit")]
    [InlineData("material cups low 2.5", "is no count of pieces")]
    public void What_makes_no_sense_is_refused(string words, string why) =>
        Assert.Contains(why, studio.Refuses(words).PlainText, StringComparison.Ordinal);

    [Fact]
    public void It_can_be_taken_back()
    {
        var before = Known("white");
        studio.Tells("material white pack 500 ml 10.40 low 400 ml bottle 62 g");
        Assert.True(studio.Say("undo").Recorded);
        Assert.Equal(before with { Packs = [] }, Known("white") with { Packs = [] });
        Assert.Equal(before.Packs, Known("white").Packs);
    }

    private Material Known(string name) => studio.Look(view => view.Materials.All().Single(one => one.Name == name));
}
