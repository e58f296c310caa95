using StudioBot.Chat.Tests.Support;
using StudioBot.Records.Pieces;
using StudioBot.Records.Stock;

namespace StudioBot.Chat.Tests.Sharing;

/// <summary>Figures are worked by hand from the invented studio's shelf: white 40 ml in W-1 and 780 ml in W-2.</summary>
public sealed class UsedCommandTests : IDisposable
{
    private readonly LiveStudio studio = LiveStudio.Sample();

    public void Dispose() => studio.Dispose();

    [Fact]
    public void It_leaves_the_oldest_lot_first_and_says_what_is_left()
    {
        // both lots: 17.50 for 1 L
        Assert.Equal("20 ml white used, 800 ml left.\nFrom W-1.\nBooked: 0.35 on Mira's account.", studio.Tells("used 20 ml white"));
        Assert.Equal((20, 780), (studio.Left("W-1"), studio.Left("W-2")));
    }

    [Fact]
    public void It_goes_on_with_the_next_lot()
    {
        Assert.Equal("60 ml white used, 760 ml left.\nFrom W-1 (40 ml) and W-2 (20 ml).\nBooked: 1.05 on Mira's account.", studio.Tells("used 60 ml white"));
        Assert.Equal((0, 760), (studio.Left("W-1"), studio.Left("W-2")));
    }

    [Fact]
    public void A_stopped_lot_is_passed_over()
    {
        studio.Tells("stop lot W-1 yellowed");

        Assert.Contains("From W-2.", studio.Tells("used 20 ml white"), StringComparison.Ordinal);
        Assert.Equal((40, 760), (studio.Left("W-1"), studio.Left("W-2")));
    }

    [Fact]
    public void A_lot_that_is_named_is_the_one_it_leaves()
    {
        Assert.StartsWith("100 ml white used, 720 ml left.\nFrom W-2.\n", studio.Tells("used 100 ml white lot w2"), StringComparison.Ordinal);
        Assert.Equal((40, 680), (studio.Left("W-1"), studio.Left("W-2")));

        // each from its own: lamp black 310 ml in K-4
        Assert.Contains("White from W-2, lamp black from K-4.", studio.Tells("used 80 ml white, 10 ml lamp black lots K-4 W-2"), StringComparison.Ordinal);
        Assert.Equal((40, 600, 300), (studio.Left("W-1"), studio.Left("W-2"), studio.Left("K-4")));
    }

    [Theory]
    [InlineData("Z-99")]    // on nothing here
    [InlineData("K-4")]     // on lamp black
    public void A_label_that_is_on_no_lot_of_it_is_named_with_those_that_are(string label) =>
        Assert.Equal(
            $"“{label}” is no lot of white. Nothing recorded.\nHere: W-1, W-2.\n  used 10 ml white lot W-1",
            Shelves.Words(studio.Refuses($"used 10 ml white lot {label}")));

    [Fact]
    public void What_has_no_label_is_used_without_one() =>
        Assert.Equal(
            "“C-1” is no lot of cup. Nothing recorded.\nNone of it has a label: leave the lot out.\n  used 8 cup",
            Shelves.Words(studio.Refuses("used 8 cups lot C-1")));

    [Fact]
    public void Short_in_the_lot_that_was_named_is_asked_about()
    {
        var reply = studio.Refuses("used 100 ml white lot W-1");    // 40 are in it

        Assert.Equal(
            "White is short: 40 ml in W-1, 100 ml asked. Nothing recorded.\nOther lots are left alone. Count it first, like this?\n"
                + "  count white 100 ml lot W-1",
            Shelves.Words(reply));
        Assert.Equal(
            [("Use what is there", "used 40 ml white lot W-1"), ("Used all the same", "used 100 ml white lot W-1 anyway")],
            reply.Buttons.Select(button => (button.Label, button.Line)));
        studio.Tells(reply.Buttons[1].Line);
        Assert.Equal((0, 780), (studio.Left("W-1"), studio.Left("W-2")));
    }

    [Fact]
    public void A_stopped_lot_that_is_named_is_drawn_from_and_said_to_be_stopped()
    {
        studio.Tells("stop lot W-1 yellowed");

        Assert.Contains("\nFrom W-1.\nMinded: W-1 is stopped: yellowed.\n", studio.Tells("used 30 ml white lot W-1"), StringComparison.Ordinal);
        Assert.Equal((10, 780), (studio.Left("W-1"), studio.Left("W-2")));
    }

    [Theory]
    [InlineData("mix medium 100 ml lot M-7")]
    [InlineData("pour 20cm panel bloom white lot W-2")]
    public void Where_no_lot_is_taken_by_name_it_is_not_passed_over_in_silence(string words)
    {
        var reply = studio.Refuses(words);

        Assert.Contains($"“{words[^7..]}” is passed over: {words.Split(' ')[0]} takes no lot by name.", reply.PlainText, StringComparison.Ordinal);
        Assert.True(studio.Say(reply.Buttons[0].Line, agreed: true).Recorded);
    }

    [Fact]
    public void Several_leave_together_each_in_its_own_measure()
    {
        var said = studio.Tells("used 20ml white, 2 g blue mica, 8 cups");

        Assert.StartsWith("3 materials used; left now:\nwhite      800 ml\nblue mica    44 g\ncup            80\n", said, StringComparison.Ordinal);
        Assert.Contains("White from W-1, blue mica from the lot of 5 Oct, cup from the lot of 5 Oct.", said, StringComparison.Ordinal);
        Assert.Equal((800, 44, 80), (studio.Level("white"), studio.Level("blue mica"), studio.Level("cup")));
    }

    [Fact]
    public void One_named_twice_leaves_once()
    {
        Assert.StartsWith("25 ml white used, 795 ml left.", studio.Tells("used 20ml white\nused 5ml white"), StringComparison.Ordinal);
        Assert.Single(studio.Look(view => view.Stock.Entries()), line => line.Reason == StockReason.Used);
    }

    [Fact]
    public void A_mass_of_a_liquid_goes_by_its_density()
    {
        // 26 g / 1.30 g/ml
        Assert.Equal(
            "20 ml white used, 800 ml left.\nFrom W-1.\n26 g of white taken as 20 ml, at 1.3 g/ml.\nBooked: 0.35 on Mira's account.",
            studio.Tells("used 26 g white"));
        Assert.Equal(800, studio.Level("white"));
    }

    [Fact]
    public void A_spoon_of_a_powder_goes_by_what_a_level_one_weighs()
    {
        // 2 × 2.2 g
        Assert.StartsWith("4.4 g gold mica used, 33.6 g left.", studio.Tells("used 2 tsp gold mica"), StringComparison.Ordinal);
        Assert.Equal(33.6, studio.Level("gold mica"));
    }

    [Fact]
    public void Without_a_density_the_error_shows_how_to_set_it()
    {
        studio.Tells("material new pearl white 500 ml 14.00");
        studio.Tells("bought 500 ml pearl white");

        var reply = studio.Refuses("used 20 g pearl white");
        Assert.StartsWith("The density of pearl white is not known. Nothing recorded.", reply.PlainText, StringComparison.Ordinal);
        Assert.EndsWith("material pearl white density 1.05", reply.PlainText, StringComparison.Ordinal);
        studio.Tells("material pearl white density 1.25");
        Assert.StartsWith("16 ml pearl white used, 484 ml left.", studio.Tells("used 20 g pearl white"), StringComparison.Ordinal);
    }

    [Fact]
    public void Without_a_weighed_spoon_the_error_shows_how_to_set_it()
    {
        studio.Tells("material new pearl dust 50 g 9.00");
        studio.Tells("bought 50 g pearl dust");

        Assert.EndsWith("material pearl dust spoon 2.2 g", studio.Refuses("used 2 tsp pearl dust").PlainText, StringComparison.Ordinal);
        studio.Tells("material pearl dust spoon 3 g");
        Assert.StartsWith("6 g pearl dust used, 44 g left.", studio.Tells("used 2 tsp pearl dust"), StringComparison.Ordinal);
    }

    [Fact]
    public void A_scoop_is_the_studios_own()
    {
        Assert.Contains("\nA scoop here holds 20 ml.\n", studio.Tells("used 3 scoops neutral base"), StringComparison.Ordinal);
        Assert.Equal(2090, studio.Level("neutral base"));   // 2150 − 3 × 20
        studio.File.Write(session => session.Studio.Change(
            session.Studio.Settings()! with { Scoop = Craft.Units.Volume.FromMillilitres(25) }));
        studio.Now += TimeSpan.FromMinutes(5);

        Assert.StartsWith("75 ml neutral base used, 2015 ml left.", studio.Tells("used 3 scoops neutral base"), StringComparison.Ordinal);
    }

    [Fact]
    public void A_drop_is_about_a_twentieth() =>
        Assert.Equal(
            "0.3 ml lamp black used, 309.7 ml left.\nFrom K-4.\nA drop is taken as about 0.05 ml.\nBooked: 0.01 on Mira's account.",
            studio.Tells("used 6 drops lamp black"));

    [Fact]
    public void A_spoon_is_too_rough_for_resin() =>
        Assert.Contains("too rough for resin", studio.Refuses("used 2 tsp resin A").PlainText, StringComparison.Ordinal);

    [Fact]
    public void What_is_not_there_is_asked_about_and_not_booked()
    {
        var reply = studio.Refuses("used 900 ml white");    // 820 are there

        Assert.StartsWith("White is short: 820 ml in use here, 900 ml asked. Nothing recorded.", reply.PlainText, StringComparison.Ordinal);
        Assert.Equal(
            [("Use what is there", "used 820 ml white"), ("Used all the same", "used 900 ml white anyway")],
            reply.Buttons.Select(button => (button.Label, button.Line)));
    }

    [Fact]
    public void Neither_of_the_buttons_takes_a_level_below_nothing()
    {
        var buttons = studio.Refuses("used 20 ml thinner, 900 ml white").Buttons;
        Assert.Equal("used 20 ml thinner, 820 ml white", buttons[0].Line);

        var said = studio.Tells(buttons[1].Line);

        Assert.Contains("The book had 820 ml white: the rest is booked as found.", said, StringComparison.Ordinal);
        Assert.Equal((0, 390), (studio.Level("white"), studio.Level("thinner")));
        Assert.Contains(
            studio.Look(view => view.Stock.Entries()),
            line => line is { Reason: StockReason.Counted, Fills: true } && line.Amount == Ml(80));
        Assert.True(studio.Say("undo").Recorded);
        Assert.Equal((820, 410), (studio.Level("white"), studio.Level("thinner")));
    }

    [Fact]
    public void What_is_used_for_a_piece_is_noted_with_it()
    {
        Assert.Contains("Noted with piece 17.", studio.Tells("used 10 ml white for 17"), StringComparison.Ordinal);
        Assert.Contains(
            studio.Look(view => view.Pieces.Lines(17)),
            line => line.What is PieceEvent.Note { Words: "used for it: 10 ml white" });
    }

    [Fact]
    public void It_is_booked_on_whom_it_is_for()
    {
        var outcome = studio.Say("used 20 ml white for Pia");

        Assert.True(outcome.Recorded);
        Assert.Equal("Pia", Assert.Single(outcome.Asides).To.Name);
        var (line, pia) = studio.Look(view => (view.Stock.Entries()[^1], view.Members.All().Single(one => one.Name == "Pia")));
        Assert.Equal(pia.Id, line.MemberId);
    }

    [Fact]
    public void A_level_that_falls_below_its_mark_is_said() =>
        Assert.Contains("White is low: its mark is 300 ml.", studio.Tells("used 600 ml white"), StringComparison.Ordinal);

    [Theory]
    [InlineData("used 20 ml white")]
    [InlineData("used 60 ml white, 2 tsp gold mica")]
    [InlineData("used 8 cups")]
    [InlineData("used 10 ml white for 17")]
    [InlineData("used 10 ml white lot W-2")]
    public void It_can_be_taken_back(string words) => studio.IsUndone(words);

    private static Records.Materials.Amount.ByVolume Ml(double millilitres) =>
        new Records.Materials.Amount.ByVolume(Craft.Units.Volume.FromMillilitres(millilitres));
}
