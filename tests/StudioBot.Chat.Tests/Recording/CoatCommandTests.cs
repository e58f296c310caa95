using StudioBot.Chat.Replies;
using StudioBot.Chat.Tests.Support;
using StudioBot.Craft.Air;
using StudioBot.Craft.Units;
using StudioBot.Records.Materials;
using StudioBot.Records.Pieces;

namespace StudioBot.Chat.Tests.Recording;

public sealed class CoatCommandTests : IDisposable
{
    private readonly LiveStudio _studio = LiveStudio.Sample();

    public void Dispose() => _studio.Dispose();

    // Worked by hand from the sheet's hours at 21 °C, carried to 20 °C by Arrhenius at 50 and 60 kJ/mol, 1.072 and 1.087
    // times as long: opens 6 h → 6 h 31, closes 12 h → 12 h 52, handling 24 h → 26 h 06, full cure 7 → 7.6 days, each
    // from 10:00 in Vienna. Film: 180 ml less a tenth that runs off, over 900 cm². Cost: 120 ml of R-3 at 58.00 for 2 L and
    // 60 ml of H-12 at 32.00 for 1 L.
    [Fact]
    public void A_coat_says_its_film_lots_hours_and_what_is_left()
    {
        Assert.Equal(
            """
            14, coat 1: 180 ml, film 1.82 mm.
            resin A     120 ml, 2000 ml left
            hardener B   60 ml, 1000 ml left
            Lots R-3, H-12. Flows 43 min at 20 °C.
            Next coat from today 16:40 to 22:50. May be moved from Thu 12:10; cured by 3 Dec.
            ! Gloves; the product's sheet first.
            Booked: 5.40 on Mira's account.
            """.ReplaceLineEndings("\n"),
            _studio.Hear("coat 14 120 A 60 B lots R-3 H-12"));

        var coat = LastCoat(14);
        Assert.Equal((120, 60), (coat.A.Millilitres, coat.B.Millilitres));
        Assert.Equal(1.818, coat.Film!.Value.Millimetres, 3);
        Assert.Equal(new RoomAir(Temperature.FromCelsius(20), RelativeHumidity.FromPercent(55)), coat.Air);
        Assert.Equal(["R-3", "H-12"], Labels(coat));
        Assert.Equal(Stage.Coated, StageOf(14));
    }

    [Fact]
    public void Unnamed_lots_are_the_oldest_first()
    {
        _studio.Say("coat 14 270 ml 2:1");   // 180 of A: 120 in R-2, 60 from R-3; 90 of B: 60 in H-11, 30 from H-12

        Assert.Equal(["H-11", "H-12", "R-2", "R-3"], Labels(LastCoat(14)).Order(StringComparer.Ordinal));
        Assert.Equal(1940, Left("resin A"), 3);
        Assert.Equal(970, Left("hardener B"), 3);
    }

    [Fact]
    public void Several_pieces_share_by_area()
    {
        _studio.Say("coat 14 16 260 ml 2:1");   // 900 and 400 cm²

        Assert.Equal(120, LastCoat(14).A.Millilitres, 3);
        Assert.Equal(60, LastCoat(14).B.Millilitres, 3);
        Assert.Equal(80, LastCoat(16).A.Millilitres + LastCoat(16).B.Millilitres, 3);
        Assert.Equal(LastCoat(14).Film, LastCoat(16).Film);
    }

    [Fact]
    public void Off_its_ratio_it_asks_and_says_what_would_mend_it()
    {
        var asked = _studio.Say("coat 14 120 A 50 B");

        Assert.False(asked.Recorded);
        Assert.Contains(
            "B is 17 % short for 2:1 by volume: it stays soft or sticky. Don't pour: add 10 ml of B while it is fresh.",
            asked.Reply.PlainText,
            StringComparison.Ordinal);
        Assert.Equal(Stage.Ready, StageOf(14));
        Assert.Equal(2120, Left("resin A"), 3);
        Assert.True(_studio.Say(asked.Reply.Buttons[0].Line, agreed: true).Recorded);
    }

    [Theory]
    [InlineData("coat 14 120 resin A and 60 hardener B")]
    [InlineData("coat 14 120+60 ml")]
    [InlineData("coat 14 120 ml A 60 ml B")]
    [InlineData("coat 14 180 ml")]
    public void It_may_be_told_in_several_ways(string words)
    {
        Assert.True(_studio.Say(words).Recorded);
        Assert.Equal((120, 60), (Math.Round(LastCoat(14).A.Millilitres, 3), Math.Round(LastCoat(14).B.Millilitres, 3)));
    }

    [Fact]
    public void Another_resin_may_have_been_meant()
    {
        var asked = _studio.Say("coat 14 100 A 100 B").Reply;

        Assert.True(_studio.Say(asked.Buttons.Single(button => button.Label == "It is 1:1").Line).Recorded);
    }

    [Theory]
    [InlineData("coat 17 180 ml 2:1", "17 is still drying: resin shuts the water in.")]
    [InlineData("coat 14 1200 ml 2:1", "is a cast, not a coat: it heats up.")]
    [InlineData("coat 14 270 ml 2:1 lots R-2 H-12", "Resin A R-2: 120 ml here, 180 ml needed.")]
    public void What_is_doubted_waits_for_the_button_that_agrees(string words, string doubt)
    {
        var asked = _studio.Say(words);

        Assert.False(asked.Recorded);
        Assert.Contains(doubt, asked.Reply.PlainText, StringComparison.Ordinal);
        var agreed = _studio.Say(Assert.Single(asked.Reply.Buttons).Line, agreed: true);
        Assert.True(agreed.Recorded, agreed.Reply.PlainText);
    }

    [Theory]
    [InlineData("coat 1 180 ml 2:1", "1 is sold: it takes no coat. Nothing recorded.")]
    [InlineData("coat 14 180 ml 2:1 lot V-3", "V-3 is a lot of gloss varnish, not of a resin. Nothing recorded.")]
    [InlineData("coat 14 120 A 60 white", "A coat is of two parts, A and B. Nothing recorded.")]
    public void What_can_not_be_is_named(string words, string trouble)
    {
        Assert.StartsWith(trouble, _studio.Hear(words), StringComparison.Ordinal);
        Assert.Equal(Stage.Sold, StageOf(1));
    }

    [Fact]
    public void A_coat_after_the_window_is_told_so()
    {
        _studio.Say("coat 14 180 ml 2:1");
        _studio.Now = _studio.Now.AddDays(2);

        var reply = _studio.Hear("coat 14 170 ml 2:1");
        Assert.StartsWith("14, coat 2:", reply, StringComparison.Ordinal);
        Assert.Contains("The window on 14 may have closed", reply, StringComparison.Ordinal);
    }

    [Fact]
    public void Undo_gives_the_resin_back()
    {
        _studio.Say("coat 14 180 ml 2:1");
        _studio.Say("undo");

        Assert.Equal(2120, Left("resin A"), 3);
        Assert.Equal(Stage.Ready, StageOf(14));
    }

    [Theory]
    [InlineData("coat 14 180 ml 2:1 21C 54%")]
    [InlineData("coat 14 290 g 100:45 by weight lot R-3")]
    [InlineData("coat 14 15 16 12 400 ml 2:1")]   // two rooms
    public void Its_reply_fits_a_phone(string words)
    {
        var reply = _studio.Say(words).Reply;

        Assert.False(reply.IsTrouble, reply.PlainText);
        Assert.True(LineBudget.FiguresFit(reply), reply.PlainText);
        Assert.True(LineBudget.Of(reply) <= LineBudget.Lines, reply.PlainText);
    }

    private Coat LastCoat(int number) =>
        _studio.Look(view => view.Pieces.Lines(number)).Select(line => line.What).OfType<PieceEvent.Coated>().Last().Coat;

    private List<string?> Labels(Coat coat) => _studio.Look(view =>
        coat.LotIds.Select(id => view.Lots.All().First(lot => lot.Id == id).Label).ToList());

    private Stage StageOf(int number) => _studio.Look(view => view.Pieces.Find(number)!.Stage);

    private double Left(string name) => _studio.Look(view =>
        ((Amount.ByVolume)view.Materials.Levels().First(level =>
            level.MaterialId == view.Materials.All().First(one => one.Name == name).Id).Left).Volume.Millilitres);
}
