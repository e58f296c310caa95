using StudioBot.Chat.Asking;
using StudioBot.Chat.Replies;
using StudioBot.Records.Materials;
using StudioBot.Records.Stock;

namespace StudioBot.Chat.Sharing;

/// <summary>A lot's ways as rows: each act that took from it, each piece once, and what became of the piece.</summary>
internal sealed class LotRows(LotTrace trace, Turn turn, Studio studio)
{
    // Beside figures of the usual width.
    private const int FateWidth = 24;

    /// <summary>Nothing on record took from it.</summary>
    public bool IsEmpty => trace.Uses.Count == 0;

    /// <summary>The rows that are sure, or those that are assumed.</summary>
    public IReadOnlyList<Figure> Of(bool isSure) =>
    [
        .. Others(isSure).Concat(Pieces(isSure)).OrderByDescending(row => row.IsDirect).ThenBy(row => row.Act)
            .SelectMany(row => row.Rows),
    ];

    /// <summary>Whose all of it is now, each once.</summary>
    public IReadOnlyList<string> Owners =>
    [
        .. trace.Uses
            .SelectMany(use => use.Pieces.Count > 0
                ? trace.Pieces.Where(piece => use.Pieces.Contains(piece.End.Number)).Select(piece => piece.End.Maker)
                : IsSomebodys(use) ? [use.Act.Whose!.Name] : [])
            .Distinct(),
    ];

    private static bool IsSomebodys(LotUse use) => use.Act.Whose is not null
        && use.Reason is not (StockReason.Counted or StockReason.Binned or StockReason.Returned);

    // Counts and waste of a mixture are not where the lot went.
    private IEnumerable<(bool IsDirect, long Act, IEnumerable<Figure> Rows)> Others(bool isSure) =>
        from use in trace.Uses
        where use.IsSure == isSure && use.Pieces.Count == 0 && (use.IsDirect || IsSomebodys(use))
        select (use.IsDirect, use.Act.Id, (IEnumerable<Figure>)[new Figure(Through(use) + What(use), Sum([use]))]);

    // Pieces that came to it by the very same acts share a row.
    private IEnumerable<(bool IsDirect, long Act, IEnumerable<Figure> Rows)> Pieces(bool isSure) =>
        from same in trace.Pieces
            .Where(piece => piece.IsSure == isSure)
            .GroupBy(piece => string.Join(' ', piece.Ways.Select(way => way.Act.Id)))
        let pieces = same.ToList()
        let way = pieces[0].Ways[0]
        select (way.IsDirect, way.Act.Id, new[] { Row(pieces) }.Concat(pieces.SelectMany(Fate)));

    // Words of any length stand whole, over several rows.
    private IEnumerable<Figure> Fate(LotPiece piece)
    {
        if (piece.Fate is not { } fate)
        {
            yield break;
        }

        var row = "";
        foreach (var word in $"{fate}, {WallTime.Day(piece.End.Since, turn, studio)}".Split(' '))
        {
            if (row.Length + 1 + word.Length > FateWidth && row.Trim().Length > 0)
            {
                yield return new Figure(row, "");
                row = " ";
            }

            row += row.Length > 0 ? $" {word}" : word;
        }

        yield return new Figure(row, "");
    }

    private Figure Row(List<LotPiece> pieces)
    {
        var way = pieces[0].Ways[0];
        var numbers = string.Join(' ', pieces.Select(piece => piece.End.Number));
        var what = way.Reason == StockReason.Coated ? $"coat of {numbers}" : $"piece {numbers}";
        var makers = Sentences.And([.. pieces.Select(piece => piece.End.Maker).Distinct()]);
        var direct = pieces[0].Ways.Where(one => one.Reason == way.Reason && one.Amounts.Count > 0).ToList();
        var isAllTheirs = direct.TrueForAll(one => one.IsDirect && one.Pieces.Count == pieces.Count);
        return new Figure(
            $"{Through(way)}{what}, {makers}",
            direct.Count > 0 && way.Amounts.Count > 0 && isAllTheirs
                ? Sum(direct)
                : WallTime.Day(way.Act.HappenedAt, turn, studio));
    }

    private static string Through(LotUse use) => use.IsDirect ? ""
        : use.From.Batch is { } batch ? $"batch {batch}, "
        : use.From.Label is { } label ? $"lot {label}, "
        : "a mixture, ";

    private static string What(LotUse use)
    {
        var batches = use.Into.Select(into => into.Batch).OfType<int>().ToList();
        var what = use.Reason switch
        {
            StockReason.Coated => "coat",
            StockReason.Poured => "pour",
            StockReason.Mixed when batches.Count > 0 => $"batch {string.Join(' ', batches)}",
            StockReason.Mixed => "mixed",
            StockReason.Counted => "count",
            StockReason.Binned => "thrown away",
            StockReason.Returned => "put back",
            _ => "used",
        };
        return use.Act.Whose is { } who ? $"{what}, {who.Name}" : what;
    }

    private static string Sum(List<LotUse> uses)
    {
        List<Amount> all = [.. uses.SelectMany(use => use.Amounts)];
        var sum = Show.Amount(ShelfLevel.Like(all[0], all.Sum(Need.UnitsOf)));
        return uses[0].Fills ? $"{sum} back" : sum;
    }
}
