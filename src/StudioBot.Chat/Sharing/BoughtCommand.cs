using StudioBot.Chat.Asking;
using StudioBot.Chat.Reading;
using StudioBot.Chat.Reading.Values;
using StudioBot.Chat.Replies;
using StudioBot.Craft.Costs;
using StudioBot.Records.Ledger;
using StudioBot.Records.Materials;
using StudioBot.Records.Stock;

namespace StudioBot.Chat.Sharing;

/// <summary><c>bought 2 x 1 L medium 24.90 lot M-7</c>: what came.</summary>
internal sealed class BoughtCommand : Act
{
    private const int MostRows = 6;
    private const int LongestLabel = 20;

    private static readonly ItemsSlot Items = new() { IsRequired = true, InPacks = true };
    private static readonly LotSlot Lot = new() { MayBeNew = true };
    private static readonly MoneySlot Price = new(Items);
    private static readonly ChoiceSlot FromKitty = KittyCash.From();

    /// <inheritdoc/>
    public override CommandSheet Sheet { get; } = new(
        "bought", Room.Sharing, "What came.",
        [Lot, Items, Price, FromKitty, RecordSlots.Day, RecordSlots.For],
        ["bought 2 x 1 L medium 24.90 lot M-7", "bought 1 L white 18.50 from kitty"])
    {
        More = "As a lot; the payer is credited, or the shared cash pays.",
        Also = ["buys", "got", "purchased"],
    };

    /// <inheritdoc/>
    internal override Reply Do(Phrase said, Writing writing)
    {
        var (own, trouble) = OwnMeasure.Of(said.Of(Items), writing);
        if (trouble is not null)
        {
            return trouble;
        }

        IReadOnlyList<Need> needs = [.. own.Select(one => one.Need)];
        var labels = said.Or(Lot, []);
        if ((Against(said, needs, writing) ?? Against(labels, needs, writing) ?? Cash(said, writing)) is { } refused)
        {
            return refused;
        }

        var sum = said.Has(Price) ? said.Of(Price).Sum : (Money?)null;
        var shares = said.Has(Price) && said.Of(Price).Lines.Count > 0
            ? ByLine(said.Of(Price), said.Of(Items).Items)
            : sum?.Split([.. needs.Select(need => (decimal)need.Units)]);
        for (var at = 0; at < needs.Count; at++)
        {
            var lot = new NewLot(needs[at].Material, needs[at].Amount, writing.HappenedAt)
            {
                Label = Label(labels, at),
                Price = shares?[at],
            };
            writing.Session.Stock.Enter(lot, StockReason.Bought, writing.Act);
        }

        if (sum is { Cents: > 0 } paid)
        {
            writing.Session.Money.Book(writing.Act,
            [
                new MoneyLine(
                    said.Has(FromKitty) ? new Account.OfKitty() : new Account.OfMember(writing.Whose.Id), paid),
                new MoneyLine(new Account.OfStudio(), -paid),
            ]);
        }

        return Bought(said, own, shares, writing);
    }

    // Any member may spend the kitty's cash: what went out of it this month, all can see.
    private static Reply? Cash(Phrase said, Writing writing) => (said.Has(FromKitty), said.Has(Price)) switch
    {
        (false, _) => null,
        (true, false) => OwnMeasure.Trouble(
            "“from kitty” needs a price: what came out of it",
            "Say what was paid:",
            "bought 1 L white 18.50 from kitty",
            writing),
        _ => KittyCash.Against(said.Of(Price).Sum, said.Line, writing),
    };

    // Each line of a receipt has its price, and its share of the postage by that; lines of one material are one.
    private static IReadOnlyList<Money> ByLine(Price price, IReadOnlyList<Item> items)
    {
        var isFree = price.Lines.All(line => line.Cents == 0);
        var postage = price.Postage.Split([.. price.Lines.Select(line => isFree ? 1m : line.Cents)]);
        return [.. items.Select((item, at) => (item.Material, Sum: price.Lines[at] + postage[at]))
            .GroupBy(line => line.Material)
            .Select(lines => new Money(lines.Sum(line => line.Sum.Cents)))];
    }

    // One price is shared by quantity: what is counted has none in common with what is measured.
    private static Reply? Against(Phrase said, IReadOnlyList<Need> needs, Writing writing)
    {
        if (!said.Has(Price))
        {
            return null;
        }

        var counted = needs.FirstOrDefault(need => need.Material.Form == MaterialForm.Counted);
        return counted is not null && said.Of(Price).Lines.Count == 0
            && needs.Any(need => need.Material.Form != MaterialForm.Counted)
            ? OwnMeasure.Trouble(
                $"One price for {counted.Material.Name} and what is measured can't be shared",
                "Send them apart, each with its price:",
                $"bought {AmountWords.Say(counted.Amount)} {counted.Material.Name} {said.Of(Price).Sum}",
                writing)
            : Prices.Against(said.Of(Price), "bought 1 L white 18.50", writing);
    }

    private static Reply? Against(IReadOnlyList<string> labels, IReadOnlyList<Need> needs, Writing writing)
    {
        if (labels.Count > 1 && labels.Count != needs.Count)
        {
            return OwnMeasure.Trouble(
                $"{labels.Count} lots stand beside {needs.Count} materials",
                "One lot for all, or one for each:",
                "bought 1 L white 18.50 lot W-3",
                writing);
        }

        if (labels.FirstOrDefault(label => label.Length > LongestLabel) is { } tooLong)
        {
            return OwnMeasure.Trouble(
                $"“{tooLong[..LongestLabel]}…” is too long for a lot",
                $"It has {LongestLabel} characters at most:",
                "bought 1 L white 18.50 lot W-3",
                writing);
        }

        var lots = writing.Session.Lots.Labelled(labels);
        for (var at = 0; at < needs.Count; at++)
        {
            var (material, label) = (needs[at].Material, Label(labels, at));
            var known = lots.FirstOrDefault(lot => lot.MaterialId == material.Id && label is not null
                && label.Equals(lot.Label, StringComparison.OrdinalIgnoreCase));
            if (known is not null)
            {
                var day = DateOnly.FromDateTime(writing.Turn.Zone.LocalOf(known.BoughtAt));
                return OwnMeasure.Trouble(
                    $"Lot {known.Label} of {material.Name} is here since {Show.Day(day)}",
                    "A delivery is a lot of its own: give it another label, or none.",
                    $"bought {AmountWords.Say(needs[at].Amount)} {material.Name} lot {Next(known.Label!)}",
                    writing);
            }
        }

        return null;

        // M-7, M-8: the next that nobody wrote on anything.
        string Next(string label)
        {
            var stem = label.TrimEnd([.. "0123456789"]);
            var number = int.TryParse(label[stem.Length..], out var last) ? last : 1;
            string next;
            do
            {
                next = $"{stem}{++number}";
            }
            while (lots.Any(lot => next.Equals(lot.Label, StringComparison.OrdinalIgnoreCase)));
            return next;
        }
    }

    private static string? Label(IReadOnlyList<string> labels, int at) => labels.Count switch
    {
        0 => null,
        1 => labels[0],
        _ => labels[at],
    };

    private static Reply Bought(
        Phrase said, IReadOnlyList<OwnMeasure> own, IReadOnlyList<Money>? shares, Writing writing)
    {
        var levels = new Levels(writing);
        List<Block> blocks = [];
        if (own is [var only])
        {
            blocks.Add(new Block.Headline(
                $"{OwnMeasure.Say(only.Need)} bought: {levels.Say(only.Need.Material)} on the shelf."));
        }
        else
        {
            blocks.Add(new Block.Headline($"{own.Count} materials bought; on the shelf now:"));
            blocks.Add(FitRows.Of([.. own.Take(MostRows)
                .Select(one => new Figure(one.Need.Material.Name, levels.Say(one.Need.Material)))]));
        }

        if (said.Has(Lot))
        {
            var labels = said.Of(Lot);
            blocks.Add(new Block.Line($"{(labels.Count == 1 ? "Lot" : "Lots")} {Sentences.And([.. labels])}."));
        }

        blocks.Add(new Block.Line(Paid(said, own, shares, writing)));
        var grounds = own.Select(one => one.Grounds).OfType<string>().Take(2);
        blocks.AddRange(grounds.Select(line => new Block.Line(line)));
        return new Reply(blocks, []);
    }

    private static string Paid(
        Phrase said, IReadOnlyList<OwnMeasure> own, IReadOnlyList<Money>? shares, Writing writing)
    {
        if (!said.Has(Price))
        {
            return "No price: nobody is credited.";
        }

        var sum = said.Of(Price).Sum;
        var packs = said.Of(Items).Items.Sum(item => item.Packs);
        var parts = own.Count > 1
            ? $" ({string.Join(", ", own.Zip(shares!, (one, share) => $"{one.Need.Material.Name} {share}").Take(3))}"
                + $"{(own.Count > 3 ? " …" : "")})"
            : packs > 1 ? $", each {Money.Rounded((double)sum.Sum / packs)}" : "";
        var postage = said.Of(Price).Postage is { Cents: > 0 } sent ? $" Postage {sent} is in it, by price." : "";
        return said.Has(FromKitty)
            ? $"{sum}{parts}: out of the kitty, nobody is credited.{postage}"
            : $"{sum}{parts}: credited to {writing.Whose.Name}.{postage}";
    }
}
