using StudioBot.Chat.Replies;
using StudioBot.Chat.Tests.Support;
using StudioBot.Craft.Units;
using StudioBot.Records.Materials;
using StudioBot.Records.Pieces;

namespace StudioBot.Chat.Tests.Recording;

public sealed class PourCommandTests : IDisposable
{
    private readonly LiveStudio _studio = LiveStudio.Sample();

    public void Dispose() => _studio.Dispose();

    // Worked by hand: 900 cm² at 2.5 mm and a fifth that runs off are 270 ml, 0.45 of 2.5 mm of it colours: 48.6 ml.
    // Three of them are 16.2 ml each, with 3 ml that stay in each cup 19.2 ml; 0.1 g of powder to each ml of its medium.
    [Fact]
    public void Named_colours_and_the_batch_leave_the_shelf_and_the_piece_gets_a_number()
    {
        var reply = _studio.Say("pour 30cm panel bloom white, lamp black, gold mica batch 12").Reply;

        Assert.StartsWith("Piece 22: write 22 under it.", reply.PlainText, StringComparison.Ordinal);
        Assert.Equal(820 - 19.2, Level("white"), 2);
        Assert.Equal(310 - 19.2, Level("lamp black"), 2);
        Assert.Equal(950 - 19.2, Level("medium"), 2);
        Assert.Equal(38 - 1.92, Level("gold mica"), 2);
        Assert.Contains("lamp black  19.2 ml, 290.8 ml left", reply.PlainText, StringComparison.Ordinal);
        Assert.Contains("on no shelf, studio air", reply.PlainText, StringComparison.Ordinal);
        Assert.Contains("Dust mask", reply.PlainText, StringComparison.Ordinal);
        var piece = Piece(22);
        Assert.Equal((Stage.Drying, "bloom", 3, 12, "Mira"), (piece.Stage, piece.Technique, piece.Colours, piece.Batch, piece.Maker));
        Assert.Equal(["white", "lamp black", "medium", "gold mica"], piece.Parts.Select(part => part.Material));
    }

    [Fact]
    public void What_was_not_named_is_said_and_offered_and_not_booked()
    {
        var reply = _studio.Say("pour 30cm panel bloom 6 colours batch 12").Reply;

        Assert.Contains("Not booked: the pigments: not named.", reply.PlainText, StringComparison.Ordinal);
        Assert.Equal(950 - 66.6, Level("medium"), 2);   // 48.6 ml and six cups of 3 ml
        Assert.Equal(1700, Level("wall paint"), 2);
        Assert.Equal("used 220 ml wall paint, 9 ml activator, 8 cups", reply.Buttons[0].Line);
        Assert.Equal("write", Sample.Hear(reply.Buttons[0].Line).Kind);
    }

    [Fact]
    public void What_the_shelf_does_not_hold_is_poured_all_the_same_and_said()
    {
        var outcome = _studio.Say("pour 1.5m panel bloom white");

        Assert.True(outcome.Recorded);
        Assert.Contains("Not booked: white: 820 ml here", outcome.Reply.PlainText, StringComparison.Ordinal);
        Assert.Equal(820, Level("white"), 2);
    }

    [Fact]
    public void A_recipe_is_followed_at_the_size_of_the_pour()
    {
        _studio.Say("pour 30cm panel bloom ocean");

        // 48.6 ml and four cups of 3 ml are 60.6 ml; ocean is 140 of medium to 30 of ultramarine in 200.
        Assert.Equal(950 - 60.6 * 0.7, Level("medium"), 2);
        Assert.Equal(265 - 60.6 * 0.15, Level("ultramarine"), 2);
        Assert.Equal("ocean", Piece(22).Recipe);
    }

    [Fact]
    public void Amounts_that_were_said_are_what_leaves()
    {
        _studio.Say("pour 30cm panel bloom 60 ml white, 40 ml lamp black, 2 g gold mica");

        Assert.Equal(760, Level("white"), 2);
        Assert.Equal(270, Level("lamp black"), 2);
        Assert.Equal(36, Level("gold mica"), 2);
        Assert.Equal(3, Piece(22).Colours);
    }

    [Fact]
    public void Several_sizes_and_counts_are_a_piece_each()
    {
        var reply = _studio.Say("pour 2 tiles 10cm + 1 panel 40cm bloom 5 colours").Reply;

        Assert.StartsWith("Pieces 22 to 24: write them under.", reply.PlainText, StringComparison.Ordinal);
        Assert.Equal([100, 100, 1600], new[] { 22, 23, 24 }.Select(number => Math.Round(Piece(number).Surface.Face.SquareCentimetres)));
    }

    [Fact]
    public void A_reserved_number_is_poured_with_the_size_it_was_given_for()
    {
        _studio.Say("number 25cm round 2cm deep");
        var reply = _studio.Say("pour 22 swipe white").Reply;

        Assert.StartsWith("Piece 22: write 22 under it.", reply.PlainText, StringComparison.Ordinal);
        Assert.Equal(Length.FromCentimetres(2), Piece(22).Depth);
        Assert.Equal("swipe", Piece(22).Technique);
        Assert.True(_studio.Say("pour 22 swipe magenta").Reply.IsTrouble);
    }

    [Fact]
    public void What_was_mixed_left_and_caught_may_be_told_with_the_pour()
    {
        _studio.Say("number 30cm panel");
        var reply = _studio.Say("pour 22 318 ml left 40 caught 55").Reply;

        Assert.Contains("318 ml mixed, 40 ml left in the cups, 55 ml caught.", reply.PlainText, StringComparison.Ordinal);
        Assert.Equal(
            [new PieceEvent.Poured(Stage.Drying, Volume.FromMillilitres(318)), new PieceEvent.Left(Volume.FromMillilitres(40))],
            _studio.Look(view => view.Pieces.Lines(22)).Select(line => line.What).Take(2));
    }

    [Fact]
    public void It_may_be_told_later_and_for_another()
    {
        var outcome = _studio.Say("pour 25cm tile swipe white for Pia yesterday");

        Assert.Equal("Pia", Piece(22).Maker);
        Assert.Equal(new DateTimeOffset(2026, 11, 24, 11, 0, 0, TimeSpan.Zero), Piece(22).PouredAt);   // noon in Vienna
        Assert.Single(outcome.Asides);
    }

    [Fact]
    public void Air_that_is_said_with_it_is_read_and_only_its_own_ready_day_is_told()
    {
        var reply = _studio.Hear("pour 30cm panel bloom 6 colours 21C 50%");

        Assert.Contains("Air of studio noted: 21 °C, 50 %.", reply, StringComparison.Ordinal);
        Assert.Contains("Ready ", reply, StringComparison.Ordinal);
        Assert.DoesNotContain("17:", reply, StringComparison.Ordinal);
        Assert.Equal(21, _studio.Look(view => view.Rooms.Current())[0].Temperature.Celsius);
    }

    [Fact]
    public void Undo_takes_the_piece_and_gives_the_paint_back()
    {
        _studio.Say("pour 30cm panel bloom white batch 12");
        _studio.Say("undo");

        Assert.Null(_studio.Look(view => view.Pieces.Find(22)));
        Assert.Equal(820, Level("white"), 2);
    }

    [Fact]
    public void A_size_is_needed_where_no_number_was_given() =>
        Assert.StartsWith("A size is missing. Nothing recorded.", _studio.Hear("pour bloom 6 colours"), StringComparison.Ordinal);

    [Theory]
    [InlineData("pour 30cm panel bloom white, lamp black, gold mica batch 12 21C 55%")]
    [InlineData("pour 2 tiles 10cm + 1 panel 40cm bloom ocean")]
    [InlineData("pour 30cm panel bloom white, lamp black, gold mica, ochre batch 12 21C 55% 318 ml left 40 caught 55")]
    [InlineData("pour 1.2m panel bloom white, magenta, ochre, lamp black, gold mica, blue mica")]
    public void Its_reply_fits_a_phone(string words) => Fits(_studio.Say(words).Reply);

    private static void Fits(Reply reply)
    {
        Assert.False(reply.IsTrouble, reply.PlainText);
        Assert.True(LineBudget.FiguresFit(reply), reply.PlainText);
        Assert.True(LineBudget.Of(reply) <= LineBudget.Lines, reply.PlainText);
    }

    private Piece Piece(int number) => _studio.Look(view => view.Pieces.Find(number)!);

    private double Level(string name) => _studio.Look(view =>
        view.Materials.Levels().First(level => level.MaterialId == view.Materials.All().First(one => one.Name == name).Id).Left) switch
    {
        Amount.ByVolume volume => volume.Volume.Millilitres,
        Amount.ByMass mass => mass.Mass.Grams,
        Amount.ByCount count => count.Count,
        _ => 0,
    };
}
