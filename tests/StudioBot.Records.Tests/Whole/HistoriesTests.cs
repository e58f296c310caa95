using CsCheck;
using StudioBot.Craft.Costs;
using StudioBot.Craft.Surfaces;
using StudioBot.Craft.Units;
using StudioBot.Records.Acts;
using StudioBot.Records.Ledger;
using StudioBot.Records.Materials;
using StudioBot.Records.Pieces;
using StudioBot.Records.Reminders;
using StudioBot.Records.Sample;
using StudioBot.Records.Stock;
using static StudioBot.Records.Tests.Saying;

namespace StudioBot.Records.Tests.Whole;

/// <summary>Random histories of acts and undos; a failure prints its seed, and CsCheck_Seed takes it back.</summary>
public sealed class HistoriesTests
{
    private const int Histories = 25;

    internal const int Undo = 12;

    [Theory]
    [InlineData(0, 1, 2, 11, Undo)]                                 // what is drawn, bought and counted
    [InlineData(4, 5, 5, 8, 9, Undo, Undo)]                         // pieces, their numbers and their pings
    [InlineData(6, 7, 10, Undo)]                                    // what is set
    [InlineData(0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, Undo, Undo, Undo)]
    public void The_books_add_up_at_every_step_and_undoing_all_of_it_leads_back_to_the_start(params int[] kinds)
    {
        Gen.Select(Gen.Int[0, kinds.Length - 1], Gen.Int[0, 999], Gen.Int[0, 999]).Array[0, 40].Sample(
            steps => Lived([.. steps.Select(step => (kinds[step.Item1], step.Item2, step.Item3))]),
            iter: Histories,
            threads: 1);
    }

    private static Surface.Disc Coaster => new(Length.FromCentimetres(10));

    private static void Lived((int What, int A, int B)[] steps)
    {
        using var studio = new TemporaryStudio();
        studio.File.Write(session =>
        {
            SampleStudio.WriteInto(session);
            var start = State(session);
            foreach (var step in steps)
            {
                Live(session, step);
                AddsUp(session);
            }

            foreach (var act in Standing(session))
            {
                Assert.IsType<Undone.Done>(session.TakeBack(act));
                AddsUp(session);
            }

            Assert.Equal(start, State(session));
        });
    }

    internal static void Live(StudioSession session, (int What, int A, int B) step)
    {
        var (what, a, b) = step;
        var members = session.Members.All();
        var mira = members[0];
        if (what == Undo)
        {
            TakeOneBack(session, a);
            return;
        }

        var act = session.Said($"kind {what}", mira);
        var liquids = session.Materials.All().Where(one => one.Form == MaterialForm.Liquid).ToList();
        var material = liquids[a % 2];
        var lots = session.Lots.All();
        var pieces = session.Pieces.All();
        var piece = pieces[b % pieces.Count].Number;
        switch (what)
        {
            case 0:
                session.Stock.Draw(material, Ml(1 + b), StockReason.Used, act);
                break;
            case 1:
                session.Stock.Enter(
                    new NewLot(material, Ml(1 + b), Morning) { Price = new Money(a) }, StockReason.Bought, act);
                break;
            case 2:
                session.Stock.Count(material, Ml(b), act);
                break;
            case 3:
                var shares = new Money(1 + b).Split([1, 2, 3]);
                session.Money.Book(act, [
                    new MoneyLine(new Account.OfKitty(), new Money(1 + b)),
                    .. shares.Zip(members, (share, who) => new MoneyLine(new Account.OfMember(who.Id), -share))
                        .Where(line => line.Sum != default)]);
                break;
            case 4:
                var number = session.Pieces.FindReserved(22) is null ? (int?)null : 22;
                session.Pieces.Pour(
                    new NewPiece(Coaster, "swipe", mira, Morning) { Number = number }, act);
                break;
            case 5:
                PieceEvent[] events =
                [
                    new PieceEvent.Dry(), new PieceEvent.NotYet(null), new PieceEvent.Note("big cells"),
                    new PieceEvent.Coated(new Coat(Volume.FromMillilitres(2), Volume.FromMillilitres(1))),
                    new PieceEvent.Shelved("A1"), new PieceEvent.Kept(), new PieceEvent.Failed(null),
                ];
                session.Pieces.Book(piece, events[a % events.Length], act);
                break;
            case 6:
                var settings = session.Studio.Settings()! with { Scoop = Volume.FromMillilitres(20 + a % 2) };
                session.Studio.Change(settings, act);
                session.Studio.Change(settings with { Name = $"Yard {b % 2}" }, act);
                break;
            case 7:
                session.Stock.Stop(lots[a % lots.Count].Id, b % 2 == 0 ? "lumps" : null, act);
                session.Stock.Opened(lots[b % lots.Count].Id, act);
                break;
            case 8:
                session.Pieces.Reserve(Coaster, null, act);
                session.Pieces.GoBack(piece, act);
                break;
            case 9:
                session.Reminders.Plan(new NewReminder("ready", $"piece {piece}", Morning, $"ready {act.Id}"), act);
                session.Reminders.Lift($"piece {pieces[a % pieces.Count].Number}", act);
                break;
            case 11:
                var made = lots.Last(lot => lot.MaterialId == Medium(session).Id);
                if (session.Stock.Draw(material, Ml(1 + b % 50), StockReason.Mixed, act) is Drawn.Taken)
                {
                    session.Stock.AddTo(made.Id, Medium(session), Ml(1 + b % 50), StockReason.Made, act);
                }

                session.Stock.Draw(Medium(session), Ml(1 + a), StockReason.Used, session.Said("used", mira));
                break;
            default:
                session.Members.MoveAccount(members[a % 2].Id, 7000 + act.Id, act);
                session.Materials.Change(material with { SolidsShare = b / 1000.0, Packs = [] }, act);
                session.Studio.Set("week day", b % 2 == 0 ? "sunday" : null, act);
                break;
        }
    }

    private static Material Medium(StudioSession session) =>
        session.Materials.All().First(one => one.Name == "medium");

    private static void TakeOneBack(StudioSession session, int which)
    {
        var acts = Standing(session);
        if (acts.Count == 0)
        {
            return;
        }

        var before = State(session);
        if (session.TakeBack(acts[which % acts.Count]) is Undone.RestsOn rests)
        {
            Assert.NotEmpty(rests.Later);
            Assert.All(rests.Later, later => Assert.True(later.Id > acts[which % acts.Count].Id && later.Holds));
            Assert.Equal(before, State(session));
        }
    }

    // The newest first.
    private static List<Act> Standing(StudioSession session) =>
        [.. Enumerable.Range(2, 200).Reverse().Select(id => session.Acts.Find(id)).OfType<Act>()
            .Where(act => act.Holds && act.UndoesId is null)];

    private static void AddsUp(StudioSession session)
    {
        var sums = session.Stock.Entries().GroupBy(line => line.MaterialId)
            .ToDictionary(
                lines => lines.Key,
                lines => lines.Sum(line => line.Fills ? Size(line.Amount) : -Size(line.Amount)));
        var lots = session.Lots.All();
        foreach (var level in session.Materials.Levels())
        {
            Assert.Equal(sums.GetValueOrDefault(level.MaterialId), Size(level.Left) + Size(level.Stopped), 6);
            var own = lots.Where(lot => lot.MaterialId == level.MaterialId).ToLookup(lot => lot.Stopped is not null);
            Assert.Equal(own[false].Sum(lot => Size(lot.Left)), Size(level.Left), 6);
            Assert.Equal(own[true].Sum(lot => Size(lot.Left)), Size(level.Stopped), 6);
        }

        var worths = session.Stock.Entries().GroupBy(line => line.LotId).ToDictionary(
            lines => lines.Key,
            lines => lines.Sum(line => line.Fills ? line.Worth.Cents : -line.Worth.Cents));
        foreach (var lot in lots)
        {
            Assert.Equal(worths.GetValueOrDefault(lot.Id), lot.Worth.Cents);
            Assert.InRange(lot.Worth.Cents, 0, Size(lot.Left) > 0 ? long.MaxValue : 0);
        }

        Assert.Equal(0, session.Money.Balances().Sum(balance => balance.Sum.Cents));
    }

    private static double Size(Amount amount) => amount switch
    {
        Amount.ByVolume poured => poured.Volume.Millilitres,
        Amount.ByMass weighed => weighed.Mass.Grams,
        Amount.ByCount counted => counted.Count,
        _ => throw new ArgumentOutOfRangeException(nameof(amount), amount, "Measured in no known way."),
    };

    private static List<string> State(StudioSession session) =>
    [
        .. session.Materials.Levels().Select(level => $"{level}"),
        .. session.Materials.All().Select(one => $"{one with { Packs = [] }} {string.Join(',', one.Packs)}"),
        .. session.Lots.All().Select(lot => $"{lot}"),
        .. session.Money.Balances().Select(balance => $"{balance}"),
        .. session.Pieces.All().Select(piece =>
            $"{piece with { Parts = [] }} {session.Pieces.Lines(piece.Number).Count}"),
        $"{session.Studio.Settings()} {session.Studio.Setting("week day")} {session.Pieces.FindReserved(22)}",
        .. session.Members.All().Select(member => string.Join(',', session.Members.Accounts(member.Id))),
        .. session.Reminders.Due(Morning.AddYears(1)).Select(reminder => $"{reminder}"),
    ];
}
