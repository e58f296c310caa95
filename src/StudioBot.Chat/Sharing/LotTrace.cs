using System.Text.RegularExpressions;
using StudioBot.Chat.Asking;
using StudioBot.Chat.Replies;
using StudioBot.Records.Acts;
using StudioBot.Records.Materials;
using StudioBot.Records.Pieces;
using StudioBot.Records.Recipes;
using StudioBot.Records.Stock;
using Booked = StudioBot.Records.Acts.Act;

namespace StudioBot.Chat.Sharing;

/// <summary>Follows a lot through the books: into batches, coats and pieces, and out of the studio's hands.</summary>
internal sealed partial class LotTrace
{
    private readonly Lot _lot;
    private readonly Turn _turn;
    private readonly Studio _studio;
    private readonly List<StockLine> _drawn;
    private readonly List<PieceLine> _events;
    private readonly Dictionary<int, Piece> _pieces;
    private readonly IReadOnlyList<Batch> _batches;
    private readonly Dictionary<long, Booked> _acts;
    private readonly Batch? _own;

    private LotTrace(Lot lot, Turn turn, Studio studio)
    {
        (_lot, _turn, _studio) = (lot, turn, studio);
        _drawn = [.. studio.View.Stock.Holding(lotId: lot.Id)
            .Where(line => line.Reason is not (StockReason.Opening or StockReason.Bought or StockReason.Made))];
        _pieces = studio.View.Pieces.All().ToDictionary(piece => piece.Number);
        _events = [.. studio.View.Pieces.Lines().Where(line => _pieces.ContainsKey(line.Number))];
        _batches = studio.View.Batches.All();
        _own = _batches.FirstOrDefault(batch => batch.LotId == lot.Id);
        _acts = studio.View.Acts
            .These(_drawn.Select(line => line.ActId).Concat(_events.Select(line => line.ActId)).Distinct())
            .ToDictionary(act => act.Id);
    }

    /// <summary>All that took from this lot, in the order it was booked.</summary>
    public static IReadOnlyList<LotUse> Of(Lot lot, Turn turn, Studio studio)
    {
        var trace = new LotTrace(lot, turn, studio);
        return [.. trace.Booked(), .. trace.CoatsOnly(), .. trace.PiecesOfOwn(), .. trace.PiecesOfBatches()];
    }

    private IEnumerable<LotUse> Booked() => _drawn.GroupBy(line => (line.ActId, line.Reason, line.Fills)).Select(same =>
    {
        var act = _acts[same.Key.ActId];
        var pieces = same.Key.Reason switch
        {
            StockReason.Coated => Of<PieceEvent.Coated>(act),
            StockReason.Poured => Of<PieceEvent.Poured>(act),
            _ => [],
        };
        var isSure = IsNamed(act) || Coats(act).Any(coat => coat.LotIds.Contains(_lot.Id))
            || (same.Key.Reason == StockReason.Poured && _own is not null && NamesBatch(act, _own));
        var amount = Sum(same) is var sum && same.Key.Fills ? $"{sum} back" : sum;
        return new LotUse(isSure, What(same.Key.Reason, act, pieces), amount, Owners(same.Key.Reason, act, pieces));
    });

    // Books that opened with a coat know its lots, and not how much of them it took.
    private IEnumerable<LotUse> CoatsOnly() =>
        from line in _events
        where line.What is PieceEvent.Coated { Coat: var coat } && coat.LotIds.Contains(_lot.Id)
            && !_drawn.Exists(drawn => drawn.ActId == line.ActId)
        select OfPiece(_pieces[line.Number], isSure: true, "coat of", line.At);

    private IEnumerable<LotUse> PiecesOfOwn() => _own is null ? [] : PouredFrom(_own)
        .Where(pour => !_drawn.Exists(drawn => drawn.ActId == pour.ActId && drawn.Reason == StockReason.Poured))
        .Select(pour => OfPiece(_pieces[pour.Number], NamesBatch(_acts[pour.ActId], _own), "piece", pour.At));

    private IEnumerable<LotUse> PiecesOfBatches() =>
        from same in _drawn
            .Where(line => line is { Reason: StockReason.Mixed, Fills: false })
            .GroupBy(line => line.ActId)
        from batch in _batches.Where(one => one.ActId == same.Key)
        from pour in PouredFrom(batch)
        select OfPiece(
            _pieces[pour.Number],
            IsNamed(_acts[same.Key]) && NamesBatch(_acts[pour.ActId], batch),
            $"batch {batch.Number}, piece",
            pour.At);

    private IEnumerable<PieceLine> PouredFrom(Batch batch) => _events
        .Where(line => line.What is PieceEvent.Poured && _pieces[line.Number].Batch == batch.Number);

    private LotUse OfPiece(Piece piece, bool isSure, string what, DateTimeOffset at) => new(
        isSure, $"{what} {piece.Number}, {piece.Maker}", WallTime.Day(at, _turn, _studio), [piece.Maker]);

    private List<Piece> Of<T>(Booked act)
        where T : PieceEvent =>
        [.. _events
            .Where(line => line.ActId == act.Id && line.What is T)
            .Select(line => _pieces[line.Number])
            .Distinct()];

    private IEnumerable<Coat> Coats(Booked act) => _events.Where(line => line.ActId == act.Id)
        .Select(line => line.What)
        .OfType<PieceEvent.Coated>()
        .Select(coated => coated.Coat);

    private string What(StockReason reason, Booked act, List<Piece> pieces)
    {
        var numbers = string.Join(' ', pieces.Select(piece => piece.Number));
        var batch = _batches.FirstOrDefault(one => one.ActId == act.Id);
        var what = reason switch
        {
            StockReason.Coated when pieces.Count > 0 => $"coat of {numbers}",
            StockReason.Coated => "coat",
            StockReason.Poured when pieces.Count > 0 => $"piece {numbers}",
            StockReason.Poured => "pour",
            StockReason.Mixed when batch is not null => $"batch {batch.Number}",
            StockReason.Mixed => "mixed",
            StockReason.Counted => "count",
            StockReason.Binned => "thrown away",
            StockReason.Returned => "put back",
            _ => "used",
        };
        var who = pieces.Count > 0 ? pieces[0].Maker : act.Whose?.Name;
        return who is null ? what : $"{what}, {who}";
    }

    private static IReadOnlyList<string> Owners(StockReason reason, Booked act, List<Piece> pieces) =>
        pieces.Count > 0 ? [.. pieces.Select(piece => piece.Maker)]
        : reason is StockReason.Counted or StockReason.Binned or StockReason.Returned || act.Whose is null ? []
        : [act.Whose.Name];

    private static string Sum(IEnumerable<StockLine> lines)
    {
        var all = lines.ToList();
        var sum = all.Sum(line => Need.UnitsOf(line.Amount));
        return Show.Amount(ShelfLevel.Like(all[0].Amount, sum));
    }

    // The label stands in its words; what books open with was told, not taken.
    private bool IsNamed(Booked act) => act.Kind == ActRecords.Opening
        || (_lot.Label is { } label && Words(act).Contains(label, StringComparer.OrdinalIgnoreCase));

    private static bool NamesBatch(Booked act, Batch batch)
    {
        var words = Words(act);
        var number = $"{batch.Number}";
        return act.Kind == ActRecords.Opening
            || words.Contains("b" + number, StringComparer.OrdinalIgnoreCase)
            || words.Zip(words.Skip(1)).Any(pair =>
                pair.First.Equals("batch", StringComparison.OrdinalIgnoreCase) && pair.Second == number);
    }

    private static List<string> Words(Booked act) => [.. Word().Matches(act.Words).Select(match => match.Value)];

    [GeneratedRegex(@"[\p{L}\d][\p{L}\d-]*")]
    private static partial Regex Word();
}
