using StudioBot.Chat.Asking;
using StudioBot.Chat.Reading;
using StudioBot.Chat.Reading.Values;
using StudioBot.Chat.Replies;

namespace StudioBot.Chat.Sharing;

/// <summary><c>buy</c>: what to buy.</summary>
internal sealed class BuyCommand : Ask
{
    private const int MostButtons = 4;
    private const int MostTicks = 2;

    private static readonly NamesSlot Materials = new();

    // Why, as the heading of those it holds for; each material stands under the first that does.
    private static readonly (string Heading, Func<ShelfNeed, bool> Holds)[] Whys =
    [
        ("Ordered", need => need.IsOrdered),
        ("To mix", need => need.IsMixed),
        ("None left", need => need.Level.IsOut),
        ("For workshops", need => need.IsForWorkshops),
        ("Too little until an order comes, by few uses yet", need => need.IsUnder && need.Use.Rate.IsLittleData),
        ("Too little until an order comes", need => need.IsUnder),
        ("At your own low level", _ => true),
    ];

    /// <inheritdoc/>
    public override CommandSheet Sheet { get; } = new(
        "buy", Room.Sharing, "What to buy.",
        [RowPages.Page, Materials],
        ["buy", "buy white"])
    {
        More = "In the cheapest whole packs, what it costs and why; one material's use, by last year's "
            + "season once a year is on record, reorder point by its own delivery times, days left, and until when to "
            + "order for the workshops that it counts; what past ones took, on their day or the next, is no everyday "
            + "use.",
        Also = ["shopping"],
        Cues =
        [
            new("need/needs buy"),
            new("shopping list"),
            new("what/whats low"),
            new("running low"),
        ],
    };

    /// <inheritdoc/>
    internal override Reply Answer(Phrase said, Turn turn, Studio studio)
    {
        List<ShelfNeed> all = [.. new ShelfNeeds(studio, turn.Now).All()
            .Where(need => !said.Has(Materials) || said.Of(Materials).Contains(need.Material.Name))];
        return all is [var one] && said.Has(Materials) ? BuyPage.Of(one, turn, studio) : List(all, said, studio);
    }

    private static Reply List(IReadOnlyList<ShelfNeed> all, Phrase said, Studio studio)
    {
        List<ShelfNeed> wanted = [.. all.Where(need => need.IsWanted)];
        if (wanted.Count == 0)
        {
            return new Reply(
                [
                    new Block.Headline("Nothing to buy"),
                    new Block.Line("All levels are above their reorder points and low levels."
                        + Sentences.Invented(studio)),
                ],
                [new Button("Stock", "stock")]);
        }

        return RowPages.Of(
            Headline(wanted, studio),
            [],
            [.. Whys.Select((why, at) => new RowGroup(
                why.Heading,
                [.. wanted.Where(need => Array.FindIndex(Whys, one => one.Holds(need)) == at)
                    .Select(need => new Figure(need.Material.Name, need.Words()))]))],
            [new Block.Line($"Up to the reorder point and four weeks' use.{Sentences.Invented(studio)}")],
            said,
            [
                .. wanted.Where(need => need is { IsOrdered: false, IsMixed: false }).Take(MostTicks)
                    .Select(need => OrderedCommand.Button(need.Material.Name)),
                .. wanted.Take(MostButtons).Select(need =>
                    new Button(Labels.Short($"Why {need.Material.Name}"), $"buy {need.Material.Name}")),
            ]);
    }

    private static string Headline(IReadOnlyList<ShelfNeed> wanted, Studio studio)
    {
        var bought = wanted.Where(need => need is { IsMixed: false, IsOrdered: false }).ToList();
        if (bought.Count == 0)
        {
            return wanted.Any(need => need.IsMixed) ? "Nothing to buy, but to mix" : "Nothing to buy: all is ordered";
        }

        var what = bought.Count == 1 ? $"To buy: {bought[0].Material.Name}" : $"To buy: {bought.Count} materials";
        return ShelfNeed.CostOf(bought) is { Cents: > 0 } cost
            ? $"{what}, {cost} {studio.View.Studio.Settings()?.Currency}".TrimEnd()
            : what;
    }
}
