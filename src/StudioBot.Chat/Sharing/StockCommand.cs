using StudioBot.Chat.Asking;
using StudioBot.Chat.Reading;
using StudioBot.Chat.Reading.Values;
using StudioBot.Chat.Replies;
using StudioBot.Records.Materials;

namespace StudioBot.Chat.Sharing;

/// <summary><c>stock</c>: what is on the shelf.</summary>
internal sealed class StockCommand : Ask
{
    private const int MostNamed = 3;
    private const int MostButtons = 4;

    private static readonly NamesSlot Materials = new();

    private static readonly (string Heading, MaterialForm[] Forms)[] Groups =
    [
        ("Liquids", [MaterialForm.Liquid]),
        ("Powders", [MaterialForm.Powder]),
        ("Resin", [MaterialForm.ResinA, MaterialForm.HardenerB]),
        ("Mixed here", [MaterialForm.Mixture]),
        ("Counted", [MaterialForm.Counted]),
    ];

    /// <inheritdoc/>
    public override CommandSheet Sheet { get; } = new(
        "stock", Room.Sharing, "What is on the shelf.",
        [RowPages.Page, Materials],
        ["stock", "stock white"])
    {
        More = "Every level, low ones said so; a material's lots, and where its level comes from.",
        Also = ["level", "levels", "inventory"],
        Cues =
        [
            new("left {material}"),
            new("how much have/got/have/there {material}"),
            new("any {material} left/have/got"),
            new("do we have {material}"),
            new("how much {material}"),
        ],
    };

    /// <inheritdoc/>
    internal override Reply Answer(Phrase said, Turn turn, Studio studio)
    {
        var needs = new ShelfNeeds(studio, turn.Now);
        if (!said.Has(Materials))
        {
            return Levels(needs.All(), said, studio);
        }

        var asked = needs.Named(said.Of(Materials));
        return asked is [var one] ? StockPage.Of(one, said, turn, studio) : Levels(asked, said, studio);
    }

    private static Reply Levels(IReadOnlyList<ShelfNeed> levels, Phrase said, Studio studio)
    {
        if (levels.Count == 0)
        {
            return new Reply(
                new Block.Headline("Nothing is on the shelf"),
                new Block.Line("No material was named here yet."));
        }

        var low = levels.Where(level => level.IsWanted).Select(level => level.Material.Name).ToList();
        return RowPages.Of(
            $"{(levels.Count == 1 ? "1 material" : $"{levels.Count} materials")}, {Low(low)}",
            Reserved(levels),
            [
                .. Groups.Select(group => new RowGroup(
                    group.Heading,
                    [
                        .. levels.Where(level => group.Forms.Contains(level.Material.Form))
                            .Select(level => new Figure(level.Material.Name, Left(level))),
                    ])),
            ],
            studio.IsSample ? [new Block.Line(Sentences.Invented(studio).Trim())] : [],
            said,
            said.Has(Materials)
                ? [.. levels.Take(MostButtons).Select(level => Asked(level.Material.Name))]
                : [.. low.Take(MostButtons).Select(Asked)]);
    }

    // Reserved: white 250 ml, cup 16 and 3 more.
    private static IReadOnlyList<Block> Reserved(IReadOnlyList<ShelfNeed> levels)
    {
        List<string> reserved =
        [
            .. levels.Where(level => level.Reserved.Count > 0).Select(level =>
            {
                var units = level.Reserved.Sum(one => one.Units);
                return $"{level.Material.Name} {Show.Amount(new Need(level.Material, units).Amount)}";
            }),
        ];
        var more = reserved.Count > MostNamed ? $" and {reserved.Count - MostNamed} more" : "";
        return reserved.Count == 0
            ? []
            : [new Block.Line($"Reserved: {string.Join(", ", reserved.Take(MostNamed))}{more}.")];
    }

    // 820 ml; 85 ml, low; none, low.
    private static string Left(ShelfNeed need) =>
        (need.Level.IsOut ? "none" : Show.Amount(need.Level.Left)) + (need.IsWanted ? ", low" : "");

    private static string Low(List<string> low) => low.Count switch
    {
        0 => "none low",
        <= MostNamed => $"low: {Sentences.And(low)}",
        _ => $"low: {string.Join(", ", low.Take(MostNamed))} and {low.Count - MostNamed} more",
    };

    private static Button Asked(string name) => new(Labels.Short(name), $"stock {name}");
}
