using StudioBot.Chat.Asking;
using StudioBot.Chat.Reading;
using StudioBot.Chat.Reading.Values;
using StudioBot.Chat.Replies;
using StudioBot.Craft.Units;
using StudioBot.Records.Materials;
using StudioBot.Records.Stock;

namespace StudioBot.Chat.Sharing;

/// <summary><c>count white 430 ml</c>: a stocktake.</summary>
internal sealed class CountCommand : Act
{
    /// <summary>Its word, and that of the acts it books.</summary>
    public const string Word = "count";

    // So far apart, a count and the book still say the same (common practice: what a bottle keeps on its walls).
    private const double Alike = 0.05;
    private const int MostRows = 7;

    // So many times the level in the book is asked about (common practice).
    private const double Unlikely = 5;

    private static readonly ChoiceSlot Gross = new("", "gross", ["gross"]);
    private static readonly ItemsSlot Items = new() { IsRequired = true, MayBeNothing = true };

    // Whether such a lot is here, the materials beside it say.
    private static readonly LotSlot Lots = new() { MayBeNew = true };

    /// <inheritdoc/>
    public override CommandSheet Sheet { get; } = new(
        Word, Room.Sharing, "A stocktake.",
        [Gross, Items, Lots, RecordSlots.Day],
        ["count white 430 ml", "count white 612 g gross", "count white 40 ml lot W-1"])
    {
        More = "Of what is in use, or of one lot; the book takes the level that was found.",
        Also = ["counted", "counting", "stocktake"],
    };

    /// <inheritdoc/>
    internal override IEnumerable<Meaning> AlsoUnderstood(Phrase said) => said.Has(Gross) ? [new("gross", "yes")] : [];

    /// <inheritdoc/>
    internal override Reply Do(Phrase said, Writing writing)
    {
        var items = said.Of(Items);
        if (said.Has(Gross))
        {
            var (net, heavy) = Net(items, writing);
            if (heavy is not null)
            {
                return heavy;
            }

            items = net!;
        }

        var (own, trouble) = OwnMeasure.Of(items, writing, mayBeNothing: true);
        var labels = said.Or(Lots, []);
        if ((trouble ?? Unknown(labels, own, said, writing) ?? Moved(said, own, writing)) is { } refused)
        {
            return refused;
        }

        var lots = LotsNamed.Of(labels, writing).ToLookup(one => one.Material.Id, one => one.Lot);
        if (Doubtful(said, own, lots, writing) is { } doubtful)
        {
            return doubtful;
        }

        List<(Need Counted, double Before)> counts =
            [.. own.Select(one => (one.Need, Book(one.Need, [.. lots[one.Need.Material.Id]], writing)))];
        var levels = new Levels(writing);
        IEnumerable<string?> grounds =
        [
            said.Has(Gross) ? "Less the empty bottle." : null,
            .. own.Select(one => one.Grounds),
            .. own.Select(one => lots.Contains(one.Need.Material.Id) ? null : levels.Stopped(one.Need.Material)),
        ];
        return Counted(counts, lots, [.. grounds.OfType<string>()], writing);
    }

    private Reply? Unknown(
        IReadOnlyList<string> labels, IReadOnlyList<OwnMeasure> own, Phrase said, Writing writing) =>
        LotsNamed.Against(
            labels, [.. own.Select(one => one.Need)], $"{Sheet.Word} {Items.Say(said.Of(Items))}", writing);

    // The level in the book before it took the counted one.
    private static double Book(Need counted, IReadOnlyList<Lot> lots, Writing writing) =>
        Need.UnitsOf(writing.Session.Stock.Count(counted.Material, counted.Amount, writing.Act, lots).Before);

    // What stands on the scale, less the bottle it stands in.
    private static (ItemList? Net, Reply? Trouble) Net(ItemList items, Writing writing)
    {
        List<Item> net = [];
        var materials = writing.Session.Materials.All().ToDictionary(material => material.Name);
        foreach (var item in items.Items)
        {
            if (item.Amount is not Amount.ByMass { Mass: var gross })
            {
                return (null, OwnMeasure.Trouble(
                    $"“{AmountWords.Say(item.Amount)}” is no weight, and gross is one",
                    "Weigh it with its bottle:",
                    $"count {item.Material} 612 g gross",
                    writing));
            }

            if (materials[item.Material].Bottle is not { } bottle)
            {
                return (null, OwnMeasure.Trouble(
                    $"Nobody weighed the empty bottle of {item.Material}",
                    "Count in ml or g; or a steward sets what it weighs empty:",
                    $"material {item.Material} bottle 60 g",
                    writing));
            }

            if (gross < bottle)
            {
                return (null, OwnMeasure.Trouble(
                    $"“{Show.Mass(gross)}” is less than the empty bottle: {Show.Mass(bottle)}",
                    "Weigh it with its bottle:",
                    $"count {item.Material} {Show.Mass(bottle * 2)} gross",
                    writing));
            }

            net.Add(item with { Amount = new Amount.ByMass(Mass.FromGrams(gross.Grams - bottle.Grams)) });
        }

        return (new ItemList(net), null);
    }

    // A count of another day says nothing about what moved since.
    private static Reply? Moved(Phrase said, IReadOnlyList<OwnMeasure> own, Writing writing)
    {
        if (!said.Has(RecordSlots.Day))
        {
            return null;
        }

        var since = writing.Session.Stock.Entries(writing.HappenedAt).Select(line => line.MaterialId).ToHashSet();
        return own.FirstOrDefault(one => since.Contains(one.Need.Material.Id))?.Need.Material is { } moved
            ? OwnMeasure.Trouble(
                $"{Sentences.Capital(moved.Name)} came or went since that day",
                "Count it as it stands now:",
                moved.Form == MaterialForm.Counted ? $"count 8 {moved.Name}" : $"count {moved.Name} 430 ml",
                writing)
            : null;
    }

    // More is found than ever came, or many times the level: a slip of the unit, most likely.
    private static Reply? Doubtful(
        Phrase said, IReadOnlyList<OwnMeasure> own, ILookup<long, Lot> named, Writing writing)
    {
        if (writing.Turn.IsAgreed)
        {
            return null;
        }

        foreach (var counted in own.Select(one => one.Need))
        {
            IReadOnlyList<Lot> lots = [.. named[counted.Material.Id]];
            var level = Level(counted.Material, lots, writing);
            if (IsDoubtful(counted, level, lots, writing))
            {
                return Asked(counted, counted with { Units = level }, said, writing);
            }
        }

        return null;
    }

    private static Reply Asked(Need counted, Need level, Phrase said, Writing writing) => new(
        [
            new Block.Headline($"{Show.Amount(counted.Amount)} of {counted.Material.Name}? Nothing recorded."),
            new Block.Line($"The book says {Show.Amount(level.Amount)}. If so much is there, agree; "
                + "if more came, say so first:"),
            new Block.Sample(Typed.In(
                writing.Turn, $"bought {AmountWords.Say(counted.Amount)} {counted.Material.Name}")),
        ],
        [new Button("It is there", said.Line) { Agrees = true }])
    {
        IsTrouble = true,
    };

    private static double Level(Material material, IReadOnlyList<Lot> named, Writing writing) => named.Count > 0
        ? named.Sum(lot => Need.UnitsOf(lot.Left))
        : Need.UnitsOf(new Levels(writing).Of(material));

    private static bool IsDoubtful(Need counted, double level, IReadOnlyList<Lot> named, Writing writing)
    {
        var over = counted.Units - level;
        if (over <= 0)
        {
            return false;
        }

        var came = named.Count > 0
            ? named.Sum(lot => Need.UnitsOf(lot.Bought))
            : writing.Session.Stock.Holding(counted.Material.Id)
                .Where(line => line.Fills)
                .Where(line => line.Reason is StockReason.Opening or StockReason.Bought or StockReason.Made)
                .Sum(line => Need.UnitsOf(line.Amount));
        return (came > 0 && over > came) || (level > 0 && over > Unlikely * level);
    }

    private static Reply Counted(
        List<(Need Counted, double Before)> counts,
        ILookup<long, Lot> lots,
        IReadOnlyList<string> grounds,
        Writing writing)
    {
        List<Block> blocks = [];
        if (counts is [var (only, before)])
        {
            var where = string.Concat(lots[only.Material.Id].Select(lot => $", {lot.Label}"));
            blocks.Add(new Block.Headline(
                $"{Sentences.Capital(only.Material.Name)}{where}: {Show.Amount(only.Amount)}, "
                + (Agrees(only, before) ? "agrees." : "differs.")));
            blocks.Add(new Block.Line(Sentences.Capital(Difference(only, before))));
        }
        else
        {
            var agreeing = counts.Count(one => Agrees(one.Counted, one.Before));
            blocks.Add(new Block.Headline($"{counts.Count} counted, {agreeing} agree; on the shelf now:"));
            blocks.Add(FitRows.Of([.. counts.Take(MostRows)
                .Select(one => new Figure(one.Counted.Material.Name, Show.Amount(one.Counted.Amount)))]));
            blocks.AddRange(counts.Where(one => !Agrees(one.Counted, one.Before)).Take(2).Select(one => new Block.Line(
                $"{Sentences.Capital(one.Counted.Material.Name)}: {Difference(one.Counted, one.Before)}")));
        }

        var levels = new Levels(writing);
        var low = counts.Select(one => levels.Low(one.Counted.Material)).OfType<string>();
        blocks.AddRange(grounds.Concat(low).Take(2).Select(line => new Block.Line(line)));
        return new Reply(blocks, []);
    }

    private static bool Agrees(Need counted, double before) =>
        Math.Abs(counted.Units - before) <= Alike * before + 1e-9;

    private static string Difference(Need counted, double before)
    {
        var over = Math.Round(counted.Units - before, 3);
        var difference = Show.Amount((counted with { Units = Math.Abs(over) }).Amount);
        return $"the book said {Show.Amount((counted with { Units = before }).Amount)}; "
            + (over == 0 ? "nothing to book." : $"{difference} {(over > 0 ? "more" : "less")} booked as counted.");
    }
}
