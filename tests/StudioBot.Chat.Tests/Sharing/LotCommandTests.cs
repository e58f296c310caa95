using StudioBot.Chat.Tests.Asking;
using StudioBot.Chat.Tests.Support;
using StudioBot.Craft.Surfaces;
using StudioBot.Craft.Units;
using StudioBot.Records.Acts;
using StudioBot.Records.Materials;
using StudioBot.Records.Members;
using StudioBot.Records.Pieces;
using StudioBot.Records.Recipes;
using StudioBot.Records.Stock;

namespace StudioBot.Chat.Tests.Sharing;

public sealed class LotCommandTests
{
    private readonly StockedStudio _studio = new();

    [Fact]
    public void What_nothing_took_from_says_so() =>
        Assert.Equal(
            "H-12, hardener B: 1000 ml left\n1000 ml for 32.00 EUR came 16 Nov.\nNothing on record took from it. (Invented studio.)",
            Phone.Says("lot H-12").ReplaceLineEndings("\n"));

    [Fact]
    public void What_went_before_the_books_opened_is_not_hidden() =>      // 1000 ml came, 120 ml were there
        Assert.Contains("880 ml went before these books opened.", Phone.Says("lot R-2"), StringComparison.Ordinal);

    [Fact]
    public void A_coat_that_names_the_lot_is_sure_and_one_that_does_not_is_assumed()
    {
        var hardener = _studio.Liquid("hardener B", form: MaterialForm.HardenerB);
        var lot = _studio.Bought(hardener, 500, 10, "H-12");
        var (own, other) = (Poured(_studio.Mira, 11), Poured(_studio.Pia, 12));
        Coated(own, hardener, "coat 1 120 A 60 B lots H-12", [lot]);
        Coated(other, hardener, "coat 2 120 A 60 B", []);

        var said = _studio.Says("lot h-12").ReplaceLineEndings("\n");

        Assert.StartsWith("H-12, hardener B: 380 ml left", said, StringComparison.Ordinal);     // 500 - 60 - 60
        Assert.Contains("Sure, the lot was named:\ncoat of 1, Mira  60 ml\n", said, StringComparison.Ordinal);
        Assert.Contains("Assumed, the oldest open lot:\ncoat of 2, Pia  60 ml\n", said, StringComparison.Ordinal);
        Assert.EndsWith("Whose: Mira and Pia.", said, StringComparison.Ordinal);
    }

    [Fact]
    public void A_use_whose_words_name_the_lot_is_sure()
    {
        var white = _studio.Liquid("white");
        _studio.Bought(white, 500, 10, "W-1");
        _studio.Went(white, 20, 11, words: "used 20 ml white lot w-1", who: _studio.Pia);
        _studio.Went(white, 30, 12, words: "used 30 ml white");

        var said = _studio.Says("lot W-1").ReplaceLineEndings("\n");

        Assert.Contains("Sure, the lot was named:\nused, Pia  20 ml\n", said, StringComparison.Ordinal);
        Assert.Contains("Assumed, the oldest open lot:\nused, Mira  30 ml\n", said, StringComparison.Ordinal);
    }

    [Fact]
    public void What_was_undone_did_not_take_from_it()
    {
        var white = _studio.Liquid("white");
        _studio.Bought(white, 500, 10, "W-1");
        var slip = _studio.Went(white, 20, 11);
        _studio.Write(session => session.Undo.Take(slip.Id, new NewAct("undo", _studio.Mira, "undo", StockedStudio.On(12))));

        Assert.Contains("Nothing on record took from it.", _studio.Says("lot W-1"), StringComparison.Ordinal);
    }

    [Fact]
    public void It_is_followed_through_a_batch_into_pieces()
    {
        var (paint, medium) = (_studio.Liquid("neutral base"), _studio.Liquid("medium", form: MaterialForm.Mixture));
        _studio.Bought(paint, 1000, 10, "N-5");
        Mixed(paint, medium, 300, "mix medium 400 ml", "M-1");
        Poured(_studio.Pia, 12, batch: 1, words: "pour 20cm panel bloom 3 colours batch 1");

        var raw = _studio.Says("lot N-5").ReplaceLineEndings("\n");
        var mixture = _studio.Says("lot M-1").ReplaceLineEndings("\n");

        Assert.Matches("Assumed, the oldest open lot:\nbatch 1, Mira +300 ml\nbatch 1, piece 1, Pia +12 Nov\n", raw);
        Assert.Contains("Sure, the lot was named:\npiece 1, Pia  12 Nov\n", mixture, StringComparison.Ordinal);
    }

    [Fact]
    public void A_pour_that_names_no_batch_only_assumes_it()
    {
        var (paint, medium) = (_studio.Liquid("neutral base"), _studio.Liquid("medium", form: MaterialForm.Mixture));
        _studio.Bought(paint, 1000, 10, "N-5");
        Mixed(paint, medium, 300, "mix medium 400 ml", "M-1");
        Poured(_studio.Pia, 12, batch: 1, words: "pour 20cm panel bloom 3 colours");

        Assert.Contains(
            "Assumed, the oldest open lot:\npiece 1, Pia  12 Nov\n",
            _studio.Says("lot M-1").ReplaceLineEndings("\n"),
            StringComparison.Ordinal);
    }

    [Fact]
    public void The_two_parts_of_a_kit_may_share_a_label()
    {
        _studio.Bought(_studio.Liquid("resin A", form: MaterialForm.ResinA), 1000, 10, "K-1");
        _studio.Bought(_studio.Liquid("hardener B", form: MaterialForm.HardenerB), 500, 10, "K-1");

        Assert.StartsWith("K-1, resin A: 1000 ml left; K-1, hardener B: 500 ml left", _studio.Says("lot K-1"), StringComparison.Ordinal);
    }

    [Fact]
    public void A_stopped_lot_says_since_when_and_why()
    {
        var lot = _studio.Bought(_studio.Liquid("white"), 500, 10, "W-1");
        _studio.Write(session => session.Stock.Stop(lot, "yellowed", _studio.Said(session, "stop", 13)));

        Assert.Contains("Stopped 13 Nov: yellowed.", _studio.Says("lot W-1"), StringComparison.Ordinal);
    }

    [Fact]
    public void A_lot_that_many_used_goes_on_behind_a_button()
    {
        var white = _studio.Liquid("white");
        _studio.Bought(white, 500, 1, "W-1");
        for (var day = 2; day <= 24; day++)
        {
            _studio.Went(white, 5, day);
        }

        var first = _studio.Answer("lot W-1");

        Assert.Equal("lot W-1 page 2", first.Buttons.Single(button => button.Label == "More").Line);
        Assert.NotEqual(first.PlainText, _studio.Says("lot W-1 page 2"));
    }

    [Theory]
    [InlineData("lot H-12")]
    [InlineData("lots R-2 H-11")]
    [InlineData("what did hardener lot H-12 go into?")]
    public void It_fits_a_phone(string words) => Phone.Fits(words);

    private int Poured(Member maker, int day, int? batch = null, string words = "pour") => _studio.Write(session =>
        session.Pieces.Pour(
            new NewPiece(
                new Surface.Panel(Length.FromCentimetres(20), Length.FromCentimetres(20)), "bloom", maker, StockedStudio.On(day))
            {
                Batch = batch,
            },
            _studio.Said(session, "pour", day, words, maker)));

    private void Coated(int piece, Material hardener, string words, IReadOnlyList<long> lots) => _studio.Write(session =>
    {
        var act = _studio.Said(session, "coat", 20, words);
        Assert.IsType<Drawn.Taken>(session.Stock.Draw(hardener, StockedStudio.Ml(60), StockReason.Coated, act));
        var coat = new Coat(Volume.FromMillilitres(120), Volume.FromMillilitres(60)) { LotIds = lots };
        session.Pieces.Book(piece, new PieceEvent.Coated(coat), act);
    });

    private void Mixed(Material part, Material made, double millilitres, string words, string label) => _studio.Write(session =>
    {
        var act = _studio.Said(session, "mix", 11, words);
        var recipe = session.Recipes.Add("medium", [Part.Of(part, StockedStudio.Ml(300))], made);
        Assert.IsType<Drawn.Taken>(session.Stock.Draw(part, StockedStudio.Ml(millilitres), StockReason.Mixed, act));
        var lot = session.Stock.Enter(
            new NewLot(made, StockedStudio.Ml(millilitres), StockedStudio.On(11)) { Label = label }, StockReason.Made, act);
        session.Batches.Add(recipe, _studio.Mira, StockedStudio.On(11), Volume.FromMillilitres(millilitres), act, lot);
    });
}
