using StudioBot.Chat.Drying;
using StudioBot.Craft.Drying;

namespace StudioBot.Chat.Learning;

/// <summary>Past ready days against what happened.</summary>
internal static class StudioDryings
{
    private const double Low = 0.10;
    private const double Middle = 0.50;
    private const double High = 0.90;

    /// <summary>What would have been told of each piece that has dried when it was poured, in days of drying at the
    /// trade's reference air: what its room did later was nobody's to foretell.</summary>
    public static IReadOnlyList<PastGuess> Past(PieceReckoning reckoning)
    {
        var dried = reckoning.Finished;
        return [.. dried.Select(one =>
        {
            var asPoured = one.Known with { Words = [], Weighings = [], Dry = null };
            var shift = StudioDrying.From(
                [.. dried.Where(other => other.EndedAt < one.Piece.PouredAt).Select(other => other.Lesson)])
                .For(asPoured.Film, asPoured.Room);
            return new PastGuess(
                $"piece {one.Piece.Number}",
                one.Piece.PouredAt,
                one.Took.TotalDays,
                Days(asPoured, shift, Middle),
                Days(asPoured, StudioShift.Untaught, Middle),
                Days(asPoured, shift, Low),
                Days(asPoured, shift, High));
        })];
    }

    private static double Days(DryingPiece piece, StudioShift shift, double share) =>
        ReadyEstimate.AsPoured(piece, shift, share).TotalDays;
}
