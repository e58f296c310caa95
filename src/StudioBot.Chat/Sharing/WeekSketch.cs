using StudioBot.Chat.Asking;
using StudioBot.Chat.Pictures;
using StudioBot.Chat.Replies;
using StudioBot.Records.Materials;
using StudioBot.Records.Stock;

namespace StudioBot.Chat.Sharing;

/// <summary>What the picture of a week shows, out of the records.</summary>
internal static class WeekSketch
{
    private const int Days = 7;

    /// <summary>The picture; none where nothing was used: then nothing can be said to last so long.</summary>
    /// <param name="title">Which week.</param>
    /// <param name="span">From when to when.</param>
    /// <param name="lines">What the book holds of that time.</param>
    /// <param name="needs">All materials as they stand now.</param>
    public static ReplyFile? Of(
        string title, WeekSpan span, IReadOnlyList<StockLine> lines, IReadOnlyList<ShelfNeed> needs)
    {
        var figures = Figures(title, span, lines, needs);
        return figures.Rows.All(row => row.Weeks is null)
            ? null
            : ReplyFile.Picture("week.png", () => WeekPicture.Png(figures));
    }

    /// <summary>What it shows.</summary>
    /// <inheritdoc cref="Of"/>
    public static WeekFigures Figures(
        string title, WeekSpan span, IReadOnlyList<StockLine> lines, IReadOnlyList<ShelfNeed> needs)
    {
        var used = lines.Where(line => StockUse.IsUse(line.Reason))
            .GroupBy(line => line.MaterialId)
            .ToDictionary(
                same => same.Key,
                same => same.Sum(line => line.Fills ? -Need.UnitsOf(line.Amount) : Need.UnitsOf(line.Amount)));

        // By days of the wall: a week in which the clocks change is a week.
        var weeks = Math.Max(1, Math.Round((span.Until - span.From).TotalDays)) / Days;
        List<(ShelfNeed Need, double Used)> told = [.. needs
            .Select(need => (Need: need, Used: used.GetValueOrDefault(need.Material.Id)))
            .Where(one => one.Used > 0 || one.Need.IsWanted)
            .OrderByDescending(one => one.Need.IsWanted)
            .ThenByDescending(one => one.Used)];
        return new WeekFigures(
            title,
            [.. told.Take(WeekPicture.MostRows).Select(one => Row(one.Need, one.Used, weeks))],
            Math.Max(0, told.Count - WeekPicture.MostRows));
    }

    private static WeekRow Row(ShelfNeed need, double used, double weeks) => new(
        need.Material.Name,
        used > 0 ? Words(ShelfLevel.Like(need.Level.Left, used)) : "",
        need.Level.IsOut ? "" : Words(need.Level.Left),
        used > 0 ? Math.Max(0, need.Units) / used * weeks : null,
        !need.IsWanted ? "" : need.IsOrdered ? "low, ordered" : "low");

    private static string Words(Amount amount) => amount is Amount.ByCount { Count: var count }
        ? $"{count} {(count == 1 ? "piece" : "pieces")}"
        : Show.Amount(amount);
}
