using StudioBot.Chat.Tests.Support;
using StudioBot.Craft.Units;
using StudioBot.Records.Acts;
using StudioBot.Records.Materials;
using StudioBot.Records.Pieces;
using StudioBot.Records.Stock;

namespace StudioBot.Chat.Tests.Sharing;

public sealed class StopCommandTests : IDisposable
{
    private readonly LiveStudio studio = LiveStudio.Sample();

    public void Dispose() => studio.Dispose();

    [Fact]
    public void Nothing_is_taken_from_it_any_more()
    {
        Assert.Equal(
            "Lot H-12 stopped: nothing is taken from it any more.\nHardener B in use: 60 ml.\nNo piece is known to hold it.",
            studio.Tells("stop lot H-12 yellowed"));
        Assert.Equal("yellowed", studio.Look(view => view.Lots.All().Single(lot => lot.Label == "H-12").Stopped!.Why));
        studio.Refuses("used 100 ml hardener B");       // H-11 holds 60
    }

    [Fact]
    public void What_is_stopped_is_no_level_to_plan_with()
    {
        Assert.StartsWith("White: nothing to buy yet", studio.Hear("buy white"), StringComparison.Ordinal);

        studio.Tells("stop lot W-2 yellowed");      // 780 of the 820 ml, low at 300

        Assert.StartsWith("White: 40 ml, low (at 300 ml)", studio.Hear("stock white"), StringComparison.Ordinal);
        Assert.Contains("Apart from it 780 ml stopped, drawn from only by name: W-2 (yellowed).", studio.Hear("stock white"), StringComparison.Ordinal);
        Assert.StartsWith("Buy white: ", studio.Hear("buy white"), StringComparison.Ordinal);
        Assert.Contains("white, 40 ml here", studio.Hear("amounts 30cm panel bloom white"), StringComparison.Ordinal);
    }

    [Fact]
    public void Makers_of_pieces_that_took_from_it_are_told()
    {
        // 17 is Mira's, 18 Pia's
        Coat(17, "H-12");
        Coat(18, "H-12");

        var outcome = studio.Say("stop lot H-12 yellowed");

        Assert.Contains("Pieces 17 18 took from it: Pia is told.", outcome.Reply.PlainText, StringComparison.Ordinal);
        var aside = Assert.Single(outcome.Asides);
        Assert.Equal("Pia", aside.To.Name);
        Assert.Equal(
            "Lot H-12 (hardener B) was stopped: yellowed.\nPiece 18 of yours took from it.",
            Shelves.Words(aside.Reply));
    }

    [Fact]
    public void A_batch_passes_it_on()
    {
        studio.Tells("mix medium 400 ml");      // batch 14, from N-5 and V-3
        studio.Tells("used 30 ml white for 19");
        Pour(14, "Pia");                        // piece 22

        var outcome = studio.Say("stop lot N-5 lumps", "Tomas");

        Assert.Contains("Piece 22 took from it: Pia is told.", outcome.Reply.PlainText, StringComparison.Ordinal);
    }

    [Fact]
    public void What_was_taken_back_took_nothing()
    {
        Coat(18, "H-12");
        Assert.True(studio.Say("undo").Recorded);

        var outcome = studio.Say("stop lot H-12");

        Assert.Contains("No piece is known to hold it.", outcome.Reply.PlainText, StringComparison.Ordinal);
        Assert.Empty(outcome.Asides);
    }

    [Fact]
    public void It_can_be_taken_back()
    {
        studio.Tells("stop lot H-12");
        Assert.True(studio.Say("undo").Recorded);
        studio.Tells("used 100 ml hardener B");
    }

    private void Coat(int piece, string label) => studio.File.Write(session =>
    {
        var mira = session.Members.All()[0];
        var act = session.Acts.Begin(new NewAct("coat", mira, $"coat {piece} lots {label}", studio.Now));
        var lot = session.Lots.All().Single(one => one.Label == label);
        var material = session.Materials.All().Single(one => one.Id == lot.MaterialId);
        session.Stock.DrawFrom([lot], material, new Amount.ByVolume(Volume.FromMillilitres(50)), StockReason.Coated, act);
        session.Pieces.Book(
            piece,
            new PieceEvent.Coated(new Coat(Volume.FromMillilitres(100), Volume.FromMillilitres(50)) { LotIds = [lot.Id] }),
            act);
    });

    private void Pour(int batch, string by) => studio.File.Write(session =>
    {
        var maker = session.Members.All().Single(one => one.Name == by);
        var act = session.Acts.Begin(new NewAct("pour", maker, "pour", studio.Now));
        session.Pieces.Pour(
            new NewPiece(new Craft.Surfaces.Surface.Disc(Length.FromCentimetres(20)), "swipe", maker, studio.Now) { Batch = batch },
            act);
    });
}
