using StudioBot.Chat.Asking;
using StudioBot.Chat.Replies;
using StudioBot.Craft.Stock;
using StudioBot.Records.Materials;

namespace StudioBot.Chat.Sharing;

/// <summary>Whether one material is to be bought, and the figures that say so.</summary>
internal static class BuyPage
{
    private const string Spread = "8 times of 10";
    private const string OwnLow = "Your own low level";

    // A season that moves less is not worth a line.
    private const double Telling = 0.05;

    /// <summary>The answer, its figures, and what they rest on.</summary>
    public static Reply Of(ShelfNeed need, Turn turn, Studio studio)
    {
        List<Figure> rows = [new Figure("Left", need.Level.IsOut ? "none" : Show.Amount(need.Level.Left))];
        if (need.Lasts is { } lasts)
        {
            rows.Add(new Figure("Lasts about", lasts));
        }

        if (need.Between is { } between)
        {
            rows.Add(new Figure(Spread, $"{between} days"));
        }

        if (need.Booked > 0)
        {
            rows.Add(new Figure("Reserved", Show.Amount(new Need(need.Material, need.Booked).Amount)));
        }

        if (need.Use.Rate.PerDay > 0)
        {
            rows.Add(new Figure("A day takes", Show.Significant(need.Use.Rate.PerDay) + Unit(need.Material)));
            rows.Add(new Figure("Reorder point", Show.Amount(new Need(need.Material, need.Reorder).Amount)));
        }

        if (need.Material.Low is { } low)
        {
            rows.Add(new Figure(OwnLow, Show.Amount(low)));
        }

        // What there is no room for goes from the end: the figures of a spreadsheet, what is over, what workshops
        // took, and the spread.
        List<string> grounds = [.. Grounds(need, turn, studio)];
        string?[] last = [Apart(need), Surplus(need), Even(need)];
        Reply[] pages = [Page(last), Page(last[..2]), Page(last[..1]), Page([])];
        return pages.FirstOrDefault(page => LineBudget.Of(page) <= LineBudget.Lines) ?? Page([], isBrief: true);

        Reply Page(string?[] more, bool isBrief = false) => new(
            [
                new Block.Headline(Headline(need, studio)),
                new Block.Figures([.. rows.Where(row => !isBrief || row.Name is not (Spread or OwnLow))]),
                .. grounds.Concat(more).OfType<string>().Select(words => new Block.Line(words)),
                .. studio.IsSample ? (Block[])[new Block.Line(Sentences.Invented(studio).Trim())] : [],
            ],
            [
                .. need is { IsWanted: true, IsOrdered: false, IsMixed: false }
                    ? (Button[])[OrderedCommand.Button(need.Material.Name)]
                    : [],
                new Button("What to buy", "buy"),
                new Button(Labels.Short($"Stock {need.Material.Name}"), $"stock {need.Material.Name}"),
            ]);
    }

    // Else one would look for it in what a day takes.
    private static string? Apart(ShelfNeed need) => Math.Floor(need.Use.Apart) < 1
        ? null
        : $"Not in it: {Show.Amount(new Need(need.Material, need.Use.Apart).Amount)} for workshops, as used on "
            + "their day or the next.";

    // What a spreadsheet would say, for who checks it there; a guess is not worth it.
    private static string? Even(ShelfNeed need)
    {
        if (need.Use.Rate is { PerDay: <= 0 } or { IsLittleData: true })
        {
            return null;
        }

        var plain = ReorderPoint.Plain(need.Use.Rate, need.Lead, ServiceLevel.Usual);
        return "At that point an order is late once in 20; for even use it would be "
            + $"{Show.Amount(new Need(need.Material, plain).Amount)}.";
    }

    private static string Headline(ShelfNeed need, Studio studio)
    {
        var name = need.Material.Name;
        if (need is { IsWanted: true, IsOrdered: true })
        {
            return $"{Sentences.Capital(name)}: ordered, {need.Words()}";
        }

        if (!need.IsWanted)
        {
            return $"{Sentences.Capital(name)}: nothing to {(need.IsMixed ? "mix" : "buy")} yet";
        }

        var currency = need.IsMixed || need.Packs.Cost is null ? "" : $" {studio.View.Studio.Settings()?.Currency}";
        return $"{(need.IsMixed ? "Mix" : "Buy")} {name}: {need.Words()}{currency}".TrimEnd();
    }

    private static IEnumerable<string> Grounds(ShelfNeed need, Turn turn, Studio studio)
    {
        if (need.Units < 0)
        {
            yield return "The book shows less than nothing: count it.";
        }

        if (need.Order is { } order)
        {
            var day = WallTime.Day(order.At, turn, studio);
            yield return need.IsOrdered ? $"Ordered {day}." : $"Ordered {day}, and overdue.";
        }

        yield return need.Use switch
        {
            { Rate.PerDay: <= 0 } => $"No use in the last {need.Use.Days} days: only "
                + $"{(need.Booked > 0 ? "what is reserved" : "your own low level")} speaks.",
            { Rate.IsLittleData: true } =>
                $"Little data: used on {Times(need.Use.Uses)} in {need.Use.Days} days; a guess.",
            _ => $"Rests on {need.Use.Days} days, {need.Use.Uses} of them with use"
                + $"{(need.Use.Rate.IsLumpy ? ", in lumps" : "")}; an order takes "
                + $"{need.Deliveries.Words(need.Material)}.",
        };
        if (need.Use.Season is { } season && Math.Abs(season.Counted - 1) >= Telling)
        {
            yield return $"Last year these weeks took {Show.Number(season.Seen)} times those before; counted as "
                + $"{Show.Number(season.Counted)}.";
        }

        if (need.Booked > 0)
        {
            yield return Workshops(need, turn, studio);
        }
    }

    private static string Workshops(ShelfNeed need, Turn turn, Studio studio)
    {
        var (first, others) = (need.Counted[0], need.Counted.Count - 1);
        var counts = $"Counts the workshop of {Reservation.Day(first.Workshop, studio)}"
            + (others > 0 ? $" and {others} more" : "");
        if (need.IsMixed || need.IsOrdered || need.Endangered is not { } one)
        {
            return $"{counts}.";
        }

        var by = need.OrderBy(one);
        return by <= turn.Now
            ? $"{counts}: an order may come too late for {Reservation.Day(one.Workshop, studio)}."
            : $"{counts}: order by {WallTime.Day(by, turn, studio)}"
                + (one == first ? "." : $" for {Reservation.Day(one.Workshop, studio)}.");
    }

    private static string? Surplus(ShelfNeed need) =>
        need is { IsWanted: true, IsMixed: false, Packs.Surplus: >= 1 and var surplus }
            && ShelfNeed.DaysOf(Forecast.DaysOfCover(surplus, need.Use.Rate)) is { } days
                ? Surplus(need, surplus, days)
                : null;

    // What is over is used last, so all that is there then is held against how long it keeps.
    private static string Surplus(ShelfNeed need, double surplus, double days)
    {
        var over = Show.Amount(new Need(need.Material, surplus).Amount);
        if (need.Material.ShelfLife is not { } life)
        {
            return $"{over} over lasts about {ShelfNeed.Days(days)}.";
        }

        var all = (Math.Max(need.Free, 0) + need.Missing.Units + surplus) / need.Use.Rate.PerDay;
        return $"{over} over is gone in {ShelfNeed.Days(days)}, all of it in {ShelfNeed.Days(all)}: "
            + $"{(all <= life.TotalDays ? "before" : "not before")} it is {ShelfNeed.Days(life.TotalDays)} old.";
    }

    private static string Times(int uses) => uses == 1 ? "1 day" : $"{uses} days";

    private static string Unit(Material material) => material.Form switch
    {
        MaterialForm.Powder => " g",
        MaterialForm.Counted => "",
        _ => " ml",
    };
}
