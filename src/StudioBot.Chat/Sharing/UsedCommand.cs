using StudioBot.Chat.Asking;
using StudioBot.Chat.Reading;
using StudioBot.Chat.Reading.Values;
using StudioBot.Chat.Replies;
using StudioBot.Records.Materials;
using StudioBot.Records.Pieces;
using StudioBot.Records.Stock;

namespace StudioBot.Chat.Sharing;

/// <summary><c>used 20 ml white</c>: what left the shelf.</summary>
internal sealed class UsedCommand : Act
{
    /// <summary>With this begins what is noted of a piece that it was used for.</summary>
    internal const string NoteLead = "used for it: ";

    private const int MostRows = 6;
    private const int MostLots = 3;

    private static readonly PiecesSlot Piece = new() { Leads = ["for", "on"] };
    private static readonly ItemsSlot Items = new() { IsRequired = true };

    // Whether such a lot is here, the materials beside it say.
    private static readonly LotSlot Lots = new() { MayBeNew = true };

    // It was there, whatever the book says.
    private static readonly ChoiceSlot Anyway = new("", "anyway", ["anyway"]);

    /// <inheritdoc/>
    public override CommandSheet Sheet { get; } = new(
        "used", Room.Sharing, "What left the shelf.",
        [Piece, Items, Lots, Anyway, RecordSlots.Day, RecordSlots.For],
        [
            "used 20 ml white",
            "used 20ml white, 2 g blue mica",
            "used 8 cups",
            "used 20 ml white lot W-1",
            "used 10 ml white for 17",
        ])
    {
        More = "From the lot that is named, else the oldest open one first, never a stopped one.",
        Also = ["use", "took", "taken"],
    };

    /// <inheritdoc/>
    internal override bool MayName => false;

    /// <inheritdoc/>
    internal override Reply Do(Phrase said, Writing writing)
    {
        var (own, trouble) = OwnMeasure.Of(said.Of(Items), writing);
        if ((trouble ?? BySpoon(said, own, writing)) is { } refused)
        {
            return refused;
        }

        IReadOnlyList<Need> needs = [.. own.Select(one => one.Need)];
        var labels = said.Or(Lots, []);
        if ((LotsNamed.Against(labels, needs, $"{Sheet.Word} {Items.Say(said.Of(Items))}", writing)
            ?? FirstCame.Against(needs, said, writing, labels)) is { } doubted)
        {
            return doubted;
        }

        List<string> found = [];
        if (said.Has(Anyway))
        {
            var before = new Levels(writing);
            found.AddRange(needs.Where(need => Find(need, labels, writing)).Select(need =>
                $"The book had {before.Say(need.Material)} {need.Material.Name}: the rest is booked as found."));
        }

        var taking = Taking.Of(needs, StockReason.Used, writing, labels);
        if (taking.Short.Count > 0)
        {
            return Short(taking, needs, said, writing);
        }

        if (said.Has(Piece))
        {
            var what = Sentences.And([.. needs.Select(OwnMeasure.Say)]);
            writing.Session.Pieces.Book(said.Of(Piece)[0], new PieceEvent.Note(NoteLead + what), writing.Act);
        }

        var grounds = own.Select(one => one.Grounds).OfType<string>().Concat(Rough(said, writing));
        return Used(taking, [.. found, .. grounds], said, writing);
    }

    // A spoon is off by more than resin forgives.
    private static Reply? BySpoon(Phrase said, IReadOnlyList<OwnMeasure> own, Writing writing) =>
        own.All(one => one.Need.Material.Form is MaterialForm.ResinA or MaterialForm.HardenerB)
        && TypedWords.Of(said).FirstOrDefault(IsSpoon) is { } spoon
            ? OwnMeasure.Trouble(
                $"“{spoon}” is too rough for resin",
                "Weigh it, or use a cup with marks:",
                $"used 100 ml {own[0].Need.Material.Name}",
                writing)
            : null;

    // What was not measured but taken for so much.
    private static IEnumerable<string> Rough(Phrase said, Writing writing)
    {
        var units = TypedWords.Of(said).Select(word => UnitWords.Of(word.ToLowerInvariant())?.Name).ToHashSet();
        if (units.Contains("drop"))
        {
            yield return $"A drop is taken as about {Show.Number(UnitWords.Of("drop")!.Factor, 2)} ml.";
        }

        if (units.Contains("scoop"))
        {
            yield return $"A scoop here holds {Show.Volume(writing.Studio.Words.Scoop)}.";
        }
    }

    private static bool IsSpoon(string word) => UnitWords.Of(word.ToLowerInvariant())?.IsSpoon == true;

    // What is used was there: the lot that was named, else the newest in use, held more than its book says. Nobody is
    // given it back: who uses it pays for it at the lot's rate, and that is the studio's.
    private static bool Find(Need need, IReadOnlyList<string> labels, Writing writing)
    {
        var (material, session) = (need.Material, writing.Session);
        List<Lot> open = [.. session.Lots.Labelled(labels).Where(lot => lot.MaterialId == material.Id)];
        if (open.Count == 0)
        {
            open = [.. session.Lots.Of(material.Id).Where(lot => lot.Stopped is null)];
        }

        var missing = need with { Units = need.Units - open.Sum(lot => Need.UnitsOf(lot.Left)) };
        if (missing.Units < 0.0005)
        {
            return false;
        }

        if (open is [.., var newest])
        {
            session.Stock.AddTo(newest.Id, material, missing.Amount, StockReason.Counted, writing.Act);
        }
        else
        {
            var found = new NewLot(material, missing.Amount, writing.HappenedAt);
            session.Stock.Enter(found, StockReason.Counted, writing.Act);
        }

        return true;
    }

    private Reply Short(Taking taking, IReadOnlyList<Need> needs, Phrase said, Writing writing)
    {
        var (asked, here) = taking.Short[0];
        List<string> others = [.. taking.Short.Skip(1).Take(MostLots).Select(one => one.Asked.Material.Name)];
        var own = LotsNamed.Of(said.Or(Lots, []), writing).Where(one => one.Material.Id == asked.Material.Id)
            .Select(one => one.Lot.Label!).ToList();
        var (where, passed, lot) = own.Count > 0
            ? ($"in {Sentences.And(own)}", "Other lots are left alone.", " " + Lots.Say(own))
            : ("in use here", "Stopped lots are not taken from.", "");
        var more = others.Count > 0 ? $" Short too: {Sentences.And(others)}." : "";
        List<Item> there = [.. needs
            .Select(need => taking.Short.FirstOrDefault(one => one.Asked == need).Here ?? need)
            .Where(need => Math.Floor(need.Units * 1000) > 0)
            .Select(need => new Item(need.Material.Name, need.Amount))];
        List<Button> buttons = [new Button("Used all the same", LineWith(said.Of(Items), said) + " anyway")];
        if (there.Count > 0)
        {
            buttons.Insert(0, new Button("Use what is there", LineWith(new ItemList(there), said)));
        }

        return new Reply(
            [
                new Block.Headline(
                    $"{Sentences.Capital(asked.Material.Name)} is short: {Show.Amount(here.Amount)} {where}, "
                        + $"{Show.Amount(asked.Amount)} asked. Nothing recorded."),
                new Block.Line($"{passed}{more} Count it first, like this?"),
                new Block.Sample(Typed.In(
                    writing.Turn, $"count {asked.Material.Name} {AmountWords.Say(asked.Amount)}{lot}")),
            ],
            buttons)
        {
            IsTrouble = true,
        };
    }

    // The same message about other amounts.
    private string LineWith(ItemList items, Phrase said) => string.Join(' ', Sheet.Takes
        .Where(slot => slot != Anyway)
        .Select(slot => slot == Items ? Items.Say(items) : slot.Say(said))
        .Prepend(Sheet.Word)
        .Append(said.Remark)
        .Where(words => !string.IsNullOrEmpty(words)));

    private static Reply Used(Taking taking, IReadOnlyList<string> grounds, Phrase said, Writing writing)
    {
        var (levels, lots) = (new Levels(writing), new LotNames(writing));
        List<Block> blocks = [];
        if (taking.Taken is [var (only, from)])
        {
            blocks.Add(new Block.Headline($"{OwnMeasure.Say(only)} used, {levels.Say(only.Material)} left."));
            blocks.Add(new Block.Line($"From {lots.From(from)}."));
        }
        else
        {
            blocks.Add(new Block.Headline($"{taking.Taken.Count} materials used; left now:"));
            blocks.Add(FitRows.Of([.. taking.Taken.Take(MostRows)
                .Select(one => new Figure(one.Need.Material.Name, levels.Say(one.Need.Material)))]));
            var sources = taking.Taken.Take(MostLots)
                .Select(one => $"{one.Need.Material.Name} from {lots.From(one.From)}");
            var rest = taking.Taken.Count > MostLots ? ", the others from their oldest lots" : "";
            blocks.Add(new Block.Line(Sentences.Capital($"{string.Join(", ", sources)}{rest}.")));
        }

        var low = taking.Taken.Select(one => levels.Low(one.Need.Material)).OfType<string>();
        var piece = said.Has(Piece) ? [$"Noted with piece {said.Of(Piece)[0]}."] : Array.Empty<string>();
        var stopped = LotsNamed.Stopped(taking.Taken.SelectMany(one => one.From), writing);
        string[] lines =
        [
            .. piece.Prepend(stopped).OfType<string>(), .. Promised(taking, levels, writing), .. grounds, .. low,
        ];
        blocks.AddRange(lines.Take(2).Select(line => new Block.Line(line)));
        return new Reply(blocks, []);
    }

    // Workshops want 500 ml white: 120 ml short.
    private static IEnumerable<string> Promised(Taking taking, Levels levels, Writing writing)
    {
        var reserved = Reservation.All(writing.Studio, writing.Now);
        return taking.Taken
            .Select(one => (one.Need.Material, Units: reserved[one.Need.Material.Id].Sum(part => part.Units)))
            .Select(one => (one.Material, one.Units, Short: one.Units - Need.UnitsOf(levels.Of(one.Material))))
            .Where(one => one is { Units: > 0, Short: > 0 })
            .Take(1)
            .Select(one => $"Workshops want {Say(one.Material, one.Units)} {one.Material.Name}: "
                + $"{Say(one.Material, one.Short)} short.");
    }

    private static string Say(Material material, double units) => Show.Amount(new Need(material, units).Amount);
}
