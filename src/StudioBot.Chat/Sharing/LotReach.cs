using StudioBot.Records.Pieces;
using StudioBot.Records.Stock;

namespace StudioBot.Chat.Sharing;

/// <summary>Which pieces a lot went into, by itself or through batches that were mixed from it.</summary>
internal static class LotReach
{
    /// <summary>The pieces that hold, by number.</summary>
    public static IReadOnlyList<Piece> Of(long lotId, Writing writing)
    {
        var session = writing.Session;
        var entries = session.Stock.Entries();
        var lots = Made(lotId, entries);
        var acts = entries.Where(line => !line.Fills && lots.Contains(line.LotId))
            .Select(line => line.ActId)
            .ToHashSet();
        var batches = session.Batches.All()
            .Where(batch => batch.LotId is { } made && lots.Contains(made))
            .Select(batch => batch.Number)
            .ToHashSet();
        var numbers = session.Pieces.Lines()
            .Where(line => acts.Contains(line.ActId)
                || line.What is PieceEvent.Coated { Coat.LotIds: var coated } && coated.Any(lots.Contains))
            .Select(line => line.Number)
            .ToHashSet();
        return [.. session.Pieces.All().Where(piece =>
            numbers.Contains(piece.Number) || piece.Batch is { } batch && batches.Contains(batch))];
    }

    // The lot, and what was made by acts that mixed from it or from what was made so.
    private static HashSet<long> Made(long lotId, IReadOnlyList<StockLine> entries)
    {
        HashSet<long> lots = [lotId];
        var mixed = entries.Where(line => line is { Fills: false, Reason: StockReason.Mixed })
            .ToLookup(line => line.LotId, line => line.ActId);
        var made = entries.Where(line => line is { Fills: true, Reason: StockReason.Made })
            .ToLookup(line => line.ActId, line => line.LotId);
        Queue<long> open = new([lotId]);
        while (open.TryDequeue(out var lot))
        {
            foreach (var next in mixed[lot].SelectMany(act => made[act]).Where(lots.Add))
            {
                open.Enqueue(next);
            }
        }

        return lots;
    }
}
