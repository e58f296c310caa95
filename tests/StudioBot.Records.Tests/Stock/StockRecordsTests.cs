using StudioBot.Craft.Costs;
using StudioBot.Records.Acts;
using StudioBot.Records.Materials;
using StudioBot.Records.Members;
using StudioBot.Records.Stock;
using static StudioBot.Records.Tests.Saying;

namespace StudioBot.Records.Tests.Stock;

public sealed class StockRecordsTests : IDisposable
{
    private readonly TemporaryStudio studio = new();
    private readonly Member mira;
    private readonly Material white;
    private readonly Act bought;

    public StockRecordsTests() => (mira, white, bought) = studio.File.Write(session =>
    {
        var member = session.Members.Add("Mira", Role.Steward, Morning);
        var material = session.Materials.Add(new NewMaterial("white", MaterialForm.Liquid));
        var act = session.Said("bought", member);
        session.Stock.Enter(Lot(material, "W-2", 780, 2), StockReason.Bought, act);
        session.Stock.Enter(Lot(material, "W-1", 40, 1), StockReason.Bought, act);
        return (member, material, act);
    });

    public void Dispose() => studio.Dispose();

    [Fact]
    public void It_draws_from_the_oldest_lot_first_and_goes_on_with_the_next()
    {
        var drawn = studio.File.Write(session =>
            session.Stock.Draw(white, Ml(100), StockReason.Used, session.Said("used", mira)));

        var taken = Assert.IsType<Drawn.Taken>(drawn);
        Assert.Equal([("W-1", Ml(40)), ("W-2", Ml(60))], taken.FromLots.Select(share => (share.Label, share.Amount)));
        Assert.Equal([("W-1", Ml(0)), ("W-2", Ml(720))], Left());
        Assert.Equal(Ml(720), Level());
    }

    [Fact]
    public void What_is_not_there_is_not_drawn_and_nothing_is_booked()
    {
        var drawn = studio.File.Write(session =>
            session.Stock.Draw(white, Ml(880), StockReason.Used, session.Said("used", mira)));

        Assert.Equal(new Drawn.Short(Ml(60)), drawn);   // 820 are there
        Assert.Equal(2, studio.File.Read(view => view.Stock.Entries()).Count);
        Assert.Equal(Ml(820), Level());
    }

    [Fact]
    public void A_stopped_lot_is_drawn_from_only_where_it_is_named()
    {
        var (least, named) = studio.File.Write(session =>
        {
            session.Stock.Stop(Named(session, "W-1").Id, "yellowed", session.Said("stop", mira));
            return (
                session.Stock.Draw(white, Ml(781), StockReason.Used, session.Said("used", mira)),
                session.Stock.DrawFrom(
                    [Named(session, "W-1")], white, Ml(30), StockReason.Used, session.Said("used", mira)));
        });

        Assert.Equal(new Drawn.Short(Ml(1)), least);
        Assert.IsType<Drawn.Taken>(named);
        Assert.Equal([("W-1", Ml(10)), ("W-2", Ml(780))], Left());
        var stopped = studio.File.Read(view => view.Lots.All())[0].Stopped;
        Assert.Equal(new LotStop(Morning, "yellowed"), stopped);
    }

    [Fact]
    public void What_is_stopped_is_no_part_of_the_level()
    {
        studio.File.Write(session => session.Stock.Stop(Named(session, "W-1").Id, null, session.Said("stop", mira)));

        Assert.Equal(new Level(white.Id, Ml(780), Ml(40)), Assert.Single(studio.File.Read(view => view.Materials.Levels())));
    }

    [Fact]
    public void A_named_lot_gives_no_more_than_it_holds()
    {
        var drawn = studio.File.Write(session => session.Stock.DrawFrom(
            [Named(session, "W-1")], white, Ml(50), StockReason.Used, session.Said("used", mira)));

        Assert.Equal(new Drawn.Short(Ml(10)), drawn);
        Assert.Equal(Ml(820), Level());
    }

    [Fact]
    public void A_lot_of_something_else_is_not_drawn_from()
    {
        Assert.Throws<ArgumentException>(() => studio.File.Write(session =>
        {
            var black = session.Materials.Add(new NewMaterial("black", MaterialForm.Liquid));
            session.Stock.DrawFrom(
                [Named(session, "W-1")], black, Ml(5), StockReason.Used, session.Said("used", mira));
        }));
    }

    [Theory]
    [InlineData(430, 0, 430)]     // what is missing leaves the oldest first
    [InlineData(800, 20, 780)]
    [InlineData(820, 40, 780)]    // agrees: nothing to book
    [InlineData(900, 40, 860)]    // what is over goes into the newest
    [InlineData(0, 0, 0)]
    public void After_a_count_the_book_says_what_was_found(double counted, double oldest, double newest)
    {
        var count = studio.File.Write(session => session.Stock.Count(white, Ml(counted), session.Said("count", mira)));

        Assert.Equal(new Stocktake(Ml(820), Ml(counted)), count);
        Assert.Equal([("W-1", Ml(oldest)), ("W-2", Ml(newest))], Left());
    }

    [Fact]
    public void A_count_leaves_stopped_lots_alone_unless_they_are_named()
    {
        studio.File.Write(session => session.Stock.Stop(Named(session, "W-1").Id, null, session.Said("stop", mira)));

        var count = studio.File.Write(session => session.Stock.Count(white, Ml(25), session.Said("count", mira)));

        Assert.Equal(new Stocktake(Ml(780), Ml(25)), count);
        Assert.Equal([("W-1", Ml(40)), ("W-2", Ml(25))], Left());

        studio.File.Write(session => session.Stock.Count(white, Ml(5), session.Said("count", mira), [Named(session, "W-1")]));

        Assert.Equal([("W-1", Ml(5)), ("W-2", Ml(25))], Left());
    }

    [Fact]
    public void What_was_never_bought_and_is_found_becomes_a_lot()
    {
        var ochre = studio.File.Write(session =>
        {
            var material = session.Materials.Add(new NewMaterial("ochre", MaterialForm.Liquid));
            session.Stock.Count(material, Ml(85), session.Said("count", mira));
            return material;
        });

        var lot = studio.File.Read(view => view.Lots.All()).Single(one => one.MaterialId == ochre.Id);
        Assert.Equal((null, Ml(85), Ml(85)), (lot.Label, lot.Bought, lot.Left));
    }

    [Fact]
    public void What_is_left_in_a_cup_goes_back_into_its_lot()
    {
        studio.File.Write(session => session.Stock.AddTo(
            Named(session, "W-1").Id, white, Ml(5), StockReason.Returned, session.Said("left", mira)));

        Assert.Equal([("W-1", Ml(45)), ("W-2", Ml(780))], Left());
    }

    [Fact]
    public void The_book_says_who_took_what_and_why()
    {
        var act = studio.File.Write(session =>
        {
            var used = session.Said("used", mira);
            session.Stock.Draw(white, Ml(20), StockReason.Used, used);
            return used;
        });

        var line = Assert.Single(studio.File.Read(view => view.Stock.Of(act)));
        Assert.Equal((act.Id, white.Id, Ml(20), false), (line.ActId, line.MaterialId, line.Amount, line.Fills));
        Assert.Equal((StockReason.Used, mira.Id, Morning), (line.Reason, line.MemberId, line.HappenedAt));
    }

    [Fact]
    public void A_lot_of_which_nothing_is_left_may_open_the_books()
    {
        studio.File.Write(session => session.Stock.Enter(
            Lot(white, "W-0", 500, 0) with { Left = Ml(0), Price = Money.From(9.90m) },
            StockReason.Opening,
            session.Said("opening")));

        var lot = studio.File.Read(view => view.Lots.All())[0];
        Assert.Equal(("W-0", Ml(500), Ml(0), Money.From(9.90m)), (lot.Label, lot.Bought, lot.Left, lot.Price));
    }

    [Fact]
    public void A_delivery_that_is_taken_back_leaves_its_label_free()
    {
        Assert.IsType<Undone.Done>(studio.File.Write(session => session.TakeBack(bought, mira)));
        Assert.Empty(studio.File.Read(view => view.Lots.All()));

        studio.File.Write(session =>
            session.Stock.Enter(Lot(white, "W-1", 50, 1), StockReason.Bought, session.Said("bought", mira)));

        Assert.Equal([("W-1", Ml(50))], Left());
        Assert.Equal(Ml(50), Level());
    }

    [Fact]
    public void An_opened_lot_says_since_when_and_forgets_it_with_the_act()
    {
        var act = studio.File.Write(session =>
        {
            var opened = session.Said("opened", mira);
            session.Stock.Opened(Named(session, "W-2").Id, opened);
            return opened;
        });

        Assert.Equal(Morning, studio.File.Read(view => view.Lots.All())[1].OpenedAt);
        studio.File.Write(session => session.TakeBack(act, mira));
        Assert.Null(studio.File.Read(view => view.Lots.All())[1].OpenedAt);
    }

    [Fact]
    public void What_holds_is_all_but_what_was_undone_and_its_opposite()
    {
        studio.File.Write(session =>
        {
            session.Stock.Draw(white, Ml(50), StockReason.Used, session.Said("used", mira));
            var slip = session.Said("used", mira);
            session.Stock.Draw(white, Ml(70), StockReason.Used, slip);
            session.TakeBack(slip, mira);
        });

        // 40 and 10 are what the 50 took from the two lots; of the 70 and of its opposite nothing is left.
        var held = studio.File.Read(view => view.Stock.Holding(white.Id));
        Assert.Equal([Ml(780), Ml(40), Ml(40), Ml(10)], held.Select(line => line.Amount));
        Assert.Equal([true, true, false, false], held.Select(line => line.Fills));
        Assert.Equal(6, studio.File.Read(view => view.Stock.Entries()).Count);
    }

    [Fact]
    public void What_holds_of_one_lot_is_its_lines_only()
    {
        studio.File.Write(session => session.Stock.Draw(white, Ml(50), StockReason.Used, session.Said("used", mira)));

        var (lot, held) = studio.File.Read(view => (
            Named(view, "W-1").Id, view.Stock.Holding(lotId: Named(view, "W-1").Id)));
        Assert.Equal([(lot, Ml(40), true), (lot, Ml(40), false)], held.Select(line => (line.LotId, line.Amount, line.Fills)));
        Assert.Empty(studio.File.Read(view => view.Stock.Holding(white.Id + 1)));
    }

    private static NewLot Lot(Material material, string label, double millilitres, int day) =>
        new(material, Ml(millilitres), Morning.AddDays(day - 10)) { Label = label };

    private static Lot Named(StudioView view, string label) => view.Lots.All().Single(lot => lot.Label == label);

    private List<(string? Label, Amount Left)> Left() =>
        [.. studio.File.Read(view => view.Lots.All()).Select(lot => (lot.Label, lot.Left))];

    private Amount Level() => Assert.Single(studio.File.Read(view => view.Materials.Levels())).Left;
}
