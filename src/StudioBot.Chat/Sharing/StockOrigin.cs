using StudioBot.Chat.Asking;
using StudioBot.Chat.Replies;
using StudioBot.Records.Materials;
using StudioBot.Records.Stock;

namespace StudioBot.Chat.Sharing;

/// <summary>Where a level comes from: what was counted last, what came and went since, how long it lasts.</summary>
internal static class StockOrigin
{
    // Below what any book holds: sums of doubles may differ by so much and mean the same.
    private const double Nothing = 1e-6;

    /// <summary>Each in one sentence; what the book can't say is left out.</summary>
    /// <param name="need">Of what.</param>
    /// <param name="turn">When.</param>
    /// <param name="studio">Whose book.</param>
    /// <param name="withLast">Whether there is room for what came and went last.</param>
    public static IReadOnlyList<string> Of(ShelfNeed need, Turn turn, Studio studio, bool withLast)
    {
        var (level, material) = (need.Level, need.Material);
        var stock = studio.View.Stock;
        var (came, went) = (stock.LastMoved(material.Id, fills: true), stock.LastMoved(material.Id, fills: false));
        var counts = stock.HoldingFor(material.Id, StockReason.Counted);
        var opened = stock.HoldingFor(material.Id, StockReason.Opening);
        if (came is null && went is null && counts.Count == 0 && opened.Count == 0)
        {
            return ["Nothing is booked for it."];
        }

        var names = studio.View.Members.Names();
        List<string> sentences = [.. Since(level, counts, opened, names, turn, studio)];
        if (withLast && came is not null)
        {
            sentences.Add("Last in: " + Told(came));
        }

        if (withLast && went is not null)
        {
            sentences.Add("Last out: " + Told(went));
        }

        if (Lasts(need) is { } lasts)
        {
            sentences.Add(lasts);
        }

        return sentences;

        string Told(StockLine line) => $"{Show.Amount(line.Amount)} {Done(line.Reason)} "
            + $"{WallTime.Day(line.HappenedAt, turn, studio)}{By(line, names)}.";
    }

    // A count is known by the difference it booked: what it found is what the book said then.
    private static IEnumerable<string> Since(
        ShelfLevel level,
        IReadOnlyList<StockLine> counts,
        IReadOnlyList<StockLine> opened,
        IReadOnlyDictionary<long, string> names,
        Turn turn,
        Studio studio)
    {
        var (material, stock) = (level.Material, studio.View.Stock);
        var stops = studio.View.Lots.Of(material.Id).Where(lot => lot.Stopped is not null)
            .ToDictionary(lot => lot.Id);
        var count = counts.LastOrDefault(line => !ApartAt(line.HappenedAt).Contains(line.LotId));
        List<long> apart = count is null ? [] : ApartAt(count.HappenedAt);
        var start = 0.0;
        if (count is not null)
        {
            start = stock.Level(material.Id, count.ActId, apart);
            yield return $"Counted {Amount(material, start)} {WallTime.Day(count.HappenedAt, turn, studio)}"
                + $"{By(count, names)}.";
        }
        else if (opened.Count > 0)
        {
            start = opened.Sum(line => Need.UnitsOf(line.Amount));
            yield return $"The books opened {WallTime.Day(opened[0].HappenedAt, turn, studio)} with "
                + $"{Amount(material, start)}; not counted since.";
        }

        var (came, went) = stock.Moved(material.Id, count?.ActId ?? 0, withOpening: count is not null, apart);
        var stopped = stops.Values.Where(lot => count is null || lot.Stopped!.At > count.HappenedAt)
            .Sum(lot => Need.UnitsOf(lot.Left));
        var undone = Need.UnitsOf(level.Left) + stopped - start - came + went;
        List<string> parts =
        [
            .. came > Nothing ? (string[])[$"{Amount(material, came)} in"] : [],
            .. went > Nothing ? (string[])[$"{Amount(material, went)} out"] : [],
            .. stopped > Nothing ? (string[])[$"{Amount(material, stopped)} stopped"] : [],
            .. Math.Abs(undone) > Nothing
                ? (string[])[$"{Amount(material, Math.Abs(undone))} {(undone > 0 ? "put back" : "taken back")} by undo"]
                : [],
        ];
        if (parts.Count > 0)
        {
            var since = count is null && opened.Count == 0 ? "All told" : "Since then";
            yield return $"{since} {string.Join(", ", parts)}.";
        }

        // A count does not look at lots that were stopped before it.
        List<long> ApartAt(DateTimeOffset counted) =>
            [.. stops.Values.Where(lot => lot.Stopped!.At <= counted).Select(lot => lot.Id)];
    }

    private static string? Lasts(ShelfNeed need)
    {
        if (need.Lasts is not { } lasts)
        {
            return null;
        }

        var between = need.Between is { } span ? $" ({span})" : "";
        var rate = $"{Show.Significant(need.Use.Rate.PerDay)}{Unit(need.Material)} a day";
        var minding = need.Use.Rate switch
        {
            { IsLittleData: true } => ", by little data",
            { IsLumpy: true } => ", in lumps",
            _ => "",
        } + (need.Use.Season is null ? "" : ", with last year's season");
        return $"Lasts about {lasts}{between} at {rate}{minding}.";
    }

    private static string Amount(Material material, double units) => Show.Amount(new Need(material, units).Amount);

    private static string Unit(Material material) => material.Form switch
    {
        MaterialForm.Powder => " g",
        MaterialForm.Counted => "",
        _ => " ml",
    };

    private static string By(StockLine line, IReadOnlyDictionary<long, string> names) =>
        line.MemberId is { } id && names.TryGetValue(id, out var name) ? $" by {name}" : "";

    private static string Done(StockReason reason) => reason switch
    {
        StockReason.Opening => "there",
        StockReason.Bought => "bought",
        StockReason.Made => "made",
        StockReason.Used => "used",
        StockReason.Mixed => "mixed",
        StockReason.Poured => "poured",
        StockReason.Coated => "coated",
        StockReason.Counted => "counted",
        StockReason.Binned => "thrown away",
        _ => "put back",
    };
}
