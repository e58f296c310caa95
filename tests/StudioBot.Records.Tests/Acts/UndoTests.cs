using StudioBot.Craft.Costs;
using StudioBot.Craft.Surfaces;
using StudioBot.Craft.Units;
using StudioBot.Records.Acts;
using StudioBot.Records.Ledger;
using StudioBot.Records.Materials;
using StudioBot.Records.Members;
using StudioBot.Records.Pieces;
using StudioBot.Records.Sample;
using StudioBot.Records.Stock;
using static StudioBot.Records.Tests.Saying;

namespace StudioBot.Records.Tests.Acts;

public sealed class UndoTests : IDisposable
{
    private readonly TemporaryStudio studio = new();
    private readonly Member mira;
    private readonly Material white;

    public UndoTests() => (mira, white) = studio.File.Write(session =>
    {
        SampleStudio.WriteInto(session);
        return (session.Members.All()[0], session.Materials.All().Single(one => one.Name == "white"));
    });

    public void Dispose() => studio.Dispose();

    [Fact]
    public void The_opposite_of_each_line_is_booked_for_the_same_reason()
    {
        var act = Did("used", (session, act) => session.Stock.Draw(white, Ml(100), StockReason.Used, act));

        var done = Assert.IsType<Undone.Done>(Undo(act));

        var (lines, opposites) = studio.File.Read(view => (view.Stock.Of(act), view.Stock.Of(done.By)));
        Assert.Equal(
            lines.Select(line => (line.LotId, line.Amount, line.Reason, true)).Order(),
            opposites.Select(line => (line.LotId, line.Amount, line.Reason, line.Fills)).Order());
        Assert.Equal(2, lines.Count);   // 40 of W-1 and 60 of W-2
        Assert.Equal(Ml(820), Level(white));
        Assert.Equal((act.Id, done.By.Id), (done.By.UndoesId, done.What.UndoneById));
    }

    [Fact]
    public void Money_goes_back()
    {
        var act = Did("paid", (session, act) => session.Money.Book(act, [
            new MoneyLine(new Account.OfMember(mira.Id), new Money(3000)),
            new MoneyLine(new Account.OfKitty(), new Money(-3000))]));
        Assert.Equal(2, studio.File.Read(view => view.Money.Balances()).Count);

        Undo(act);

        Assert.Empty(studio.File.Read(view => view.Money.Balances()));
        Assert.Equal(4, studio.File.Read(view => view.Money.Entries()).Count);
    }

    [Fact]
    public void A_piece_that_was_poured_is_gone_with_what_it_took()
    {
        var act = Did("pour", (session, act) =>
        {
            session.Stock.Draw(white, Ml(50), StockReason.Poured, act);
            session.Pieces.Pour(Tile, act);
        });
        Assert.NotNull(Piece(22));

        Undo(act);

        Assert.Null(Piece(22));
        Assert.Empty(studio.File.Read(view => view.Pieces.Lines(22)));
        Assert.Equal(Ml(820), Level(white));
    }

    [Fact]
    public void The_pour_of_a_piece_that_has_a_coat_is_not_undone_and_the_coat_is_named()
    {
        var pour = Did("pour", (session, act) => session.Pieces.Pour(Tile, act));
        var coat = Did("coat", (session, act) => session.Pieces.Book(22, Coated, act));

        Assert.Equal([coat], Assert.IsType<Undone.RestsOn>(Undo(pour)).Later);
        Assert.Equal(Stage.Coated, Piece(22)!.Stage);

        Assert.IsType<Undone.Done>(Undo(coat));
        Assert.Equal(Stage.Drying, Piece(22)!.Stage);
        Assert.IsType<Undone.Done>(Undo(pour));
    }

    [Fact]
    public void A_stage_is_undone_from_the_last_one_back()
    {
        var dry = Did("dry", (session, act) => session.Pieces.Book(17, new PieceEvent.Dry(), act));
        var note = Did("note", (session, act) => session.Pieces.Book(17, new PieceEvent.Note("big cells"), act));
        var coat = Did("coat", (session, act) => session.Pieces.Book(17, Coated, act));

        Assert.Equal([coat], Assert.IsType<Undone.RestsOn>(Undo(dry)).Later);
        Assert.IsType<Undone.Done>(Undo(note));
        Assert.IsType<Undone.Done>(Undo(coat));
        Assert.IsType<Undone.Done>(Undo(dry));
        Assert.Equal(Stage.Drying, Piece(17)!.Stage);
    }

    [Fact]
    public void A_delivery_that_was_drawn_from_is_not_undone_and_who_drew_is_named()
    {
        var bought = Did("bought", (session, act) =>
            session.Stock.Enter(new NewLot(white, Ml(500), Morning) { Label = "W-9" }, StockReason.Bought, act));
        var used = Did("used", (session, act) => session.Stock.DrawFrom(
            [session.Lots.All().Single(lot => lot.Label == "W-9")], white, Ml(1), StockReason.Used, act));
        var before = studio.File.Read(view => view.Stock.Entries()).Count;

        Assert.Equal([used], Assert.IsType<Undone.RestsOn>(Undo(bought)).Later);
        Assert.Equal(before, studio.File.Read(view => view.Stock.Entries()).Count);

        Undo(used);
        Assert.IsType<Undone.Done>(Undo(bought));
        Assert.Equal(Ml(820), Level(white));
    }

    // 10 ml at 0.10, and 90 ml at 5.00 are added; 10 of the 100 ml are used at 0.51: without what was added, that is all
    // there was, and worth more than it.
    [Fact]
    public void What_made_a_lot_worth_more_stays_once_that_was_used()
    {
        var lot = 0L;
        var medium = studio.File.Read(view => view.Materials.All()).First(one => one.Name == "medium");
        Did("bought", (session, act) =>
        {
            lot = session.Stock.Enter(
                new NewLot(medium, Ml(10), Morning) { Price = new Money(10) }, StockReason.Bought, act);
            session.Stock.Enter(
                new NewLot(white, Ml(90), Morning) { Price = new Money(500), Label = "W-9" }, StockReason.Bought, act);
        });
        var added = Did("batch", (session, act) =>
        {
            session.Stock.DrawFrom([session.Lots.All().Single(one => one.Label == "W-9")], white, Ml(90), StockReason.Mixed, act);
            session.Stock.AddTo(lot, medium, Ml(90), StockReason.Made, act);
        });
        var used = Did("used", (session, act) => session.Stock.DrawFrom(
            [session.Lots.All().Single(one => one.Id == lot)], medium, Ml(10), StockReason.Used, act));
        Assert.Equal(459, studio.File.Read(view => view.Lots.All()).Single(one => one.Id == lot).Worth.Cents);

        Assert.Equal([used], Assert.IsType<Undone.RestsOn>(Undo(added)).Later);
    }

    [Fact]
    public void What_was_found_by_a_count_and_used_since_stays()
    {
        var count = Did("count", (session, act) => session.Stock.Count(white, Ml(900), act));
        Did("used", (session, act) => session.Stock.Draw(white, Ml(810), StockReason.Used, act));
        var rest = Did("used", (session, act) => session.Stock.Draw(white, Ml(60), StockReason.Used, act));

        Assert.Equal([rest], Assert.IsType<Undone.RestsOn>(Undo(count)).Later);
        Undo(rest);
        Assert.IsType<Undone.Done>(Undo(count));   // 820 were there before it, and 810 are used
        Assert.Equal(Ml(10), Level(white));
    }

    [Fact]
    public void What_a_later_count_found_had_this_in_it()
    {
        var used = Did("used", (session, act) => session.Stock.Draw(white, Ml(50), StockReason.Used, act));
        var count = Did("count", (session, act) => session.Stock.Count(white, Ml(700), act));

        Assert.Equal([count], Assert.IsType<Undone.RestsOn>(Undo(used)).Later);
        Assert.Equal(Ml(700), Level(white));

        Assert.IsType<Undone.Done>(Undo(count));
        Assert.IsType<Undone.Done>(Undo(used));
        Assert.Equal(Ml(820), Level(white));
    }

    [Fact]
    public void A_count_of_something_else_or_before_it_is_no_hindrance()
    {
        Did("count", (session, act) => session.Stock.Count(white, Ml(700), act));
        var used = Did("used", (session, act) => session.Stock.Draw(white, Ml(50), StockReason.Used, act));
        Did("count", (session, act) => session.Stock.Count(
            session.Materials.All().Single(one => one.Name == "lamp black"), Ml(3), act));

        Assert.IsType<Undone.Done>(Undo(used));
        Assert.Equal(Ml(700), Level(white));
    }

    [Fact]
    public void What_the_studio_wrote_by_itself_goes_along()
    {
        var coat = Did("coat", (session, act) => session.Pieces.Book(17, Coated, act));
        var cured = studio.File.Write(session =>
        {
            var act = session.Said("cured", words: "cured 17");
            session.Pieces.Book(17, new PieceEvent.Cured(), act);
            return act;
        });
        Assert.Equal(Stage.Cured, Piece(17)!.Stage);

        var done = Assert.IsType<Undone.Done>(Undo(coat));

        Assert.Equal([cured.Id], done.Along.Select(act => act.Id));
        Assert.Equal(Stage.Drying, Piece(17)!.Stage);
        Assert.False(studio.File.Read(view => view.Acts.Find(cured.Id))!.Holds);
    }

    [Fact]
    public void It_stays_under_what_a_member_wrote_on_top_of_it()
    {
        var coat = Did("coat", (session, act) => session.Pieces.Book(17, Coated, act));
        studio.File.Write(session => session.Pieces.Book(17, new PieceEvent.Cured(), session.Said("cured")));
        var kept = Did("kept", (session, act) => session.Pieces.Book(17, new PieceEvent.Kept(), act));

        Assert.Equal([kept], Assert.IsType<Undone.RestsOn>(Undo(coat)).Later);
        Assert.Equal(Stage.Kept, Piece(17)!.Stage);
        Undo(kept);
        Assert.Equal(Stage.Cured, Piece(17)!.Stage);
        Assert.IsType<Undone.Done>(Undo(coat));
    }

    [Fact]
    public void Ten_thousand_acts_do_not_slow_it()
    {
        var used = Did("used", (session, act) => session.Stock.Draw(white, Ml(1), StockReason.Used, act));
        foreach (var thousand in Enumerable.Range(1, 10))
        {
            studio.File.Write(session =>
            {
                for (var number = 0; number < 1000; number++)
                {
                    var act = session.Said(number % 10 == 9 ? "note" : "room", mira, minute: thousand * 10);
                    if (number % 10 == 9)
                    {
                        session.Pieces.Book(17, new PieceEvent.Note("cells"), act);
                    }
                }
            });
        }

        var last = studio.File.Read(view => view.Acts.LastOf(mira)!);
        var clock = System.Diagnostics.Stopwatch.StartNew();
        Assert.IsType<Undone.Done>(Undo(used));
        Assert.IsType<Undone.Done>(Undo(last));
        var taken = clock.Elapsed;
        Assert.True(taken < TimeSpan.FromSeconds(1), $"{taken.TotalMilliseconds:F0} ms");   // what a press may take
    }

    [Fact]
    public void A_batch_that_was_poured_from_stays()
    {
        var mix = Did("mix", (session, act) => session.Batches.Add(
            session.Recipes.All().Single(one => one.Name == "medium"),
            mira,
            Morning,
            Volume.FromMillilitres(400),
            act));
        var pour = Did("pour", (session, act) => session.Pieces.Pour(Tile with { Batch = 14 }, act));

        Assert.Equal([pour], Assert.IsType<Undone.RestsOn>(Undo(mix)).Later);
        Undo(pour);
        Assert.IsType<Undone.Done>(Undo(mix));
        Assert.Null(studio.File.Read(view => view.Batches.Find(14)));
    }

    [Fact]
    public void A_reserved_number_waits_again_when_its_pour_is_undone_and_goes_with_its_own_act()
    {
        var number = Did("number", (session, act) => session.Pieces.Reserve(Tile.Surface, null, act));
        var pour = Did("pour", (session, act) => session.Pieces.Pour(Tile with { Number = 22 }, act));
        Assert.Null(Reserved(22));
        Assert.Equal([pour], Assert.IsType<Undone.RestsOn>(Undo(number)).Later);

        Undo(pour);
        Assert.NotNull(Reserved(22));
        Assert.Equal(22, studio.File.Write(session =>
            session.Pieces.Pour(Tile with { Number = 22 }, session.Said("pour", mira))));
        Undo(studio.File.Read(view => view.Acts.LastOf(mira))!);
        Assert.IsType<Undone.Done>(Undo(number));
        Assert.Null(Reserved(22));
    }

    [Fact]
    public void A_reading_of_the_room_counts_no_more()
    {
        var act = Did("room", (session, act) => session.Rooms.Read(
            session.Rooms.All()[0],
            Temperature.FromCelsius(30),
            RelativeHumidity.FromPercent(20),
            SampleStudio.LastRecord.AddHours(2),
            act));
        Assert.Equal(30, studio.File.Read(view => view.Rooms.Current())[0].Temperature.Celsius);

        Undo(act);

        Assert.Equal(20, studio.File.Read(view => view.Rooms.Current())[0].Temperature.Celsius);
    }

    [Fact]
    public void A_lot_that_was_stopped_may_be_drawn_from_again()
    {
        var act = Did("stop", (session, act) => session.Stock.Stop(2, "lumps", act));   // W-2
        Assert.NotNull(studio.File.Read(view => view.Lots.All()).Single(lot => lot.Id == 2).Stopped);

        Undo(act);

        Assert.Null(studio.File.Read(view => view.Lots.All()).Single(lot => lot.Id == 2).Stopped);
    }

    [Fact]
    public void An_act_is_taken_back_once_and_an_undo_not_at_all()
    {
        var act = Did("used", (session, act) => session.Stock.Draw(white, Ml(1), StockReason.Used, act));
        var done = Assert.IsType<Undone.Done>(Undo(act));

        Assert.Equal(done.By, Assert.IsType<Undone.Before>(Undo(act)).By);
        Assert.IsType<Undone.NotOffered>(Undo(done.By));
        Assert.Equal(Ml(820), Level(white));
    }

    [Fact]
    public void The_opening_of_the_books_is_not_undone_nor_what_never_was()
    {
        Assert.IsType<Undone.NotOffered>(Undo(studio.File.Read(view => view.Acts.Find(1))!));
        Assert.IsType<Undone.Unknown>(studio.File.Write(session =>
            session.Undo.Take(999, new NewAct("undo", mira, "undo", Morning))));
    }

    private static PieceEvent.Coated Coated =>
        new(new Coat(Volume.FromMillilitres(120), Volume.FromMillilitres(60)));

    private NewPiece Tile => new(new Surface.Disc(Length.FromCentimetres(10)), "swipe", mira, Morning);

    private Act Did(string kind, Action<StudioSession, Act> what) => studio.File.Write(session =>
    {
        var act = session.Said(kind, mira);
        what(session, act);
        return act;
    });

    private Undone Undo(Act act) => studio.File.Write(session => session.TakeBack(act, mira));

    private Piece? Piece(int number) => studio.File.Read(view => view.Pieces.Find(number));

    private ReservedNumber? Reserved(int number) => studio.File.Read(view => view.Pieces.FindReserved(number));

    private Amount Level(Material material) =>
        studio.File.Read(view => view.Materials.Levels()).Single(level => level.MaterialId == material.Id).Left;
}
