using StudioBot.Chat.Asking;
using StudioBot.Chat.Reading;
using StudioBot.Chat.Replies;
using StudioBot.Records.Materials;

namespace StudioBot.Chat.Sharing;

/// <summary>One material's level, its lots and where the level came from.</summary>
internal static class StockPage
{
    private const int MostLotButtons = 3;
    private const int MostNamed = 2;

    /// <summary>The level first, then the lots that hold it, then what the book says of it.</summary>
    public static Reply Of(ShelfNeed need, Phrase said, Turn turn, Studio studio)
    {
        var level = need.Level;
        List<Lot> lots = [.. studio.View.Lots.Of(level.Material.Id)
            .Where(lot => Need.UnitsOf(lot.Left) > 0)];
        List<string> notes = [.. Notes(level, lots, turn, studio), .. Reserved(need, studio)];
        var worth = StockWorth.Words(level.Material, lots, studio);
        return Fitting(Page(withLast: true, worth))
            ?? Fitting(Page(withLast: false, worth))
            ?? Page(withLast: false, null);

        Reply? Fitting(Reply page) => LineBudget.Of(page) <= LineBudget.Lines ? page : null;

        Reply Page(bool withLast, string? worth) => RowPages.Of(
            Headline(need),
            [],
            [
                new RowGroup(
                    "Lots by the day they came",
                    [
                        .. lots.Select(lot => new Figure(
                            $"{Called(lot)}, {WallTime.Day(lot.BoughtAt, turn, studio)}", Left(lot))),
                    ]),
            ],
            [
                .. notes.Append(worth).OfType<string>().Select(note => new Block.Line(note)),
                new Block.Line(string.Join(' ', StockOrigin.Of(need, turn, studio, withLast))
                    + Sentences.Invented(studio)),
            ],
            said,
            [
                .. lots.Select(lot => lot.Label).OfType<string>().Take(MostLotButtons)
                    .Select(label => new Button(Labels.Short($"Lot {label}"), $"lot {label}")),
                new Button("What is known of it", $"material {level.Material.Name}"),
            ]);
    }

    /// <summary>W-2; a lot that nobody labelled.</summary>
    public static string Called(Lot lot) => lot.Label ?? "no label";

    private static string Headline(ShelfNeed need)
    {
        var level = need.Level;
        var name = Sentences.Capital(level.Material.Name);
        var left = level.IsOut ? "none left" : Show.Amount(level.Left);
        return (level.IsLow, need.IsWanted && !need.IsForWorkshops, level.Material.Low) switch
        {
            (true, _, { } low) => $"{name}: {left}, low (at {Show.Amount(low)})",
            (_, true, _) => $"{name}: {left}, low",
            (_, _, { } low) => $"{name}: {left} (low at {Show.Amount(low)})",
            _ => $"{name}: {left}",
        };
    }

    // 40 of 1000 ml: a row has no room for the same unit twice. A count may find more than came.
    private static string Left(Lot lot)
    {
        if (Need.UnitsOf(lot.Left) > Need.UnitsOf(lot.Bought))
        {
            return Show.Amount(lot.Left);
        }

        var (left, whole) = (Show.Amount(lot.Left), Show.Amount(lot.Bought));
        var unit = whole.LastIndexOf(' ') is >= 0 and var at ? whole[at..] : "";
        return $"{(left.EndsWith(unit, StringComparison.Ordinal) ? left[..^unit.Length] : left)} of {whole}";
    }

    // Reserved: 250 ml for Sat 28 Nov; 570 ml free.
    private static IEnumerable<string> Reserved(ShelfNeed need, Studio studio)
    {
        if (need.Reserved.Count > 0)
        {
            var named = string.Join(", ", need.Reserved.Take(MostNamed).Select(one => one.Words(studio)));
            var more = need.Reserved.Count > MostNamed ? $" and {need.Reserved.Count - MostNamed} more" : "";
            var free = need.Units - need.Reserved.Sum(one => one.Units);
            var left = Show.Amount(new Need(need.Material, Math.Abs(free)).Amount);
            yield return $"Reserved: {named}{more}; {left} {(free < 0 ? "short" : "free")}.";
        }
    }

    private static IEnumerable<string> Notes(
        ShelfLevel level, IReadOnlyList<Lot> lots, Turn turn, Studio studio)
    {
        var opened = lots.Where(lot => lot.OpenedAt is not null)
            .Select(lot => $"{Called(lot)} {WallTime.Day(lot.OpenedAt!.Value, turn, studio)}")
            .ToList();
        if (opened.Count > 0)
        {
            yield return $"Opened: {string.Join(", ", opened)}.";
        }

        var stopped = lots.Where(lot => lot.Stopped is not null)
            .Select(lot => Called(lot) + (lot.Stopped!.Why is { } why ? $" ({why})" : ""))
            .ToList();
        if (stopped.Count > 0)
        {
            yield return $"Apart from it {Show.Amount(level.Stopped)} stopped, drawn from only by name: "
                + $"{string.Join(", ", stopped)}.";
        }
    }
}
