using StudioBot.Chat.Tests.Support;
using StudioBot.Records.Materials;

namespace StudioBot.Chat.Tests.House;

public sealed class MaterialNewTests : IDisposable
{
    private readonly LiveStudio studio = LiveStudio.Sample();

    public void Dispose() => studio.Dispose();

    [Fact]
    public void It_is_a_material_from_now_on()
    {
        Assert.Equal(
            "Pearl white is a material now: a liquid, kept in ml.\n"
                + "Nothing of it is on the shelf. Sold by 500 ml for 14.00. To set next:\n  material pearl white density 1.05",
            studio.Tells("material new pearl white 500 ml 14.00"));
        studio.Tells("bought 500 ml pearl white 14.00");
        Assert.Equal(500, studio.Level("pearl white"));
    }

    [Theory]
    [InlineData("material new pearl dust 50 g 9.00", MaterialForm.Powder)]
    [InlineData("material new foil 100 pieces 8.00", MaterialForm.Counted)]
    [InlineData("material new clear base 1 L as resin", MaterialForm.ResinA)]
    [InlineData("material new clear setter 500 ml as hardener", MaterialForm.HardenerB)]
    [InlineData("material new reef as mixture", MaterialForm.Mixture)]
    public void Its_pack_says_how_it_is_measured(string words, MaterialForm form)
    {
        studio.Tells(words);
        Assert.Equal(form, studio.Look(view => view.Materials.All()[^1].Form));
    }

    [Fact]
    public void What_the_trade_knows_of_it_comes_along()
    {
        using var begun = LiveStudio.Empty();
        var known = begun.Look(view => view.Materials.All().First(one => one is { Form: MaterialForm.Liquid, Density: not null }));
        begun.File.Write(session => session.Materials.Change(
            known with { Name = "another" },
            session.Acts.Begin(new Records.Acts.NewAct("material", null, "rename", begun.Now))));

        begun.Tells($"material new {known.Name} 500 ml");

        Assert.Equal(known.Density, begun.Look(view => view.Materials.All()[^1].Density));
    }

    [Theory]
    [InlineData("material new white 500 ml", "is a material here already")]
    [InlineData("material new pearl white", "How it is measured is missing")]
    [InlineData("material new clear base 1 kg as resin", "is no pack of a liquid")]
    [InlineData("material new pearl white 500 ml $14.00", "they are in EUR")]
    public void What_makes_no_sense_is_refused(string words, string why) =>
        Assert.Contains(why, studio.Refuses(words).PlainText, StringComparison.Ordinal);

    [Fact]
    public void Only_a_steward_may() =>
        Assert.Contains("Only a steward", studio.Say("material new pearl white 500 ml", "Pia").Reply.PlainText, StringComparison.Ordinal);

    [Fact]
    public void It_can_be_taken_back()
    {
        studio.Tells("material new pearl white 500 ml 14.00");
        Assert.True(studio.Say("undo").Recorded);
        Assert.DoesNotContain(studio.Look(view => view.Materials.All()), one => one.Name == "pearl white");
    }
}
