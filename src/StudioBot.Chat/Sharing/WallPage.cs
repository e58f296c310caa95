using System.Globalization;
using StudioBot.Chat.Coats;
using StudioBot.Chat.Drying;
using StudioBot.Chat.Recording;
using StudioBot.Chat.Replies;
using StudioBot.Records.Pieces;

namespace StudioBot.Chat.Sharing;

/// <summary>What stands on the wall: what dries, is ready, is coated and runs low. No names, no sums: anybody in the
/// group may read it.</summary>
public static class WallPage
{
    // As many in a line as fit; one always does.
    private const int MostNamed = 4;

    /// <summary>It, as of now, without the moment: it is the same as long as nothing of it changed.</summary>
    public static Reply Of(Studio studio, DateTimeOffset now)
    {
        var moment = new StudioMoment(studio.Zone, now);
        var reckoning = new PieceReckoning(studio.View, studio.Practice, now);
        List<PieceStanding> pieces = [.. reckoning.Pieces
            .Where(piece => piece.Stage is Stage.Drying or Stage.Ready or Stage.Coated or Stage.Cured)
            .Select(piece => new PieceStanding(piece, reckoning, moment, studio))
            .OrderBy(one => one.Order).ThenBy(one => one.Piece.Number)];
        List<ShelfNeed> low = [.. new ShelfNeeds(studio, now).All().Where(need => need.IsWanted)];
        var windows = Windows(pieces, studio, now);
        return Enumerable.Range(1, MostNamed)
            .Select(fewer => Page(pieces, low, windows, moment, MostNamed + 1 - fewer))
            .FirstOrDefault(page => LineBudget.Of(page) < LineBudget.Lines) ?? Page(pieces, low, windows, moment, 1);
    }

    /// <summary>It with the moment of its last change.</summary>
    public static Reply Dated(Reply page, DateTimeOffset now, Studio studio) => page with
    {
        Blocks =
        [
            .. page.Blocks,
            new Block.Line(string.Create(
                CultureInfo.InvariantCulture, $"Changed {studio.Zone.LocalOf(now):ddd d MMM HH:mm}.")),
        ],
    };

    /// <summary>What stands there once it is kept current no more.</summary>
    public static Reply Gone { get; } = new(new Block.Line("This wall is kept no more. Say “wall” for a new one."));

    /// <summary>What the group hears where the bot may not pin.</summary>
    public static Reply MayNotPin { get; } = new(
        new Block.Line("I may not pin here, so the wall stands unpinned."),
        new Block.Line("Make me an admin who may pin messages, then say “wall” again; or pin it yourself."));

    private static Reply Page(
        List<PieceStanding> pieces,
        List<ShelfNeed> low,
        Dictionary<int, DateTimeOffset> windows,
        StudioMoment moment,
        int most)
    {
        List<string> lines =
        [
            .. Line("Drying", In(pieces, Stage.Drying), one => $"{Where(one)} {one.InList}", most),
            .. Line("Ready for resin", In(pieces, Stage.Ready), Where, most * 2),
            .. Line("Coated", In(pieces, Stage.Coated), one => Coated(one, windows, moment), most),
            .. Line("Cured", In(pieces, Stage.Cured), Where, most * 2),
            .. Line("Low", low, Low, most),
        ];
        return new Reply(
            [
                new Block.Headline("How it stands in the studio"),
                .. lines.DefaultIfEmpty("Nothing dries, nothing waits, nothing runs low.").Select(line =>
                    new Block.Line(line)),
            ],
            [new Button("Pieces", "pieces"), new Button("Stock", "stock"), new Button("To buy", "buy")]);
    }

    private static List<PieceStanding> In(List<PieceStanding> pieces, Stage stage) =>
        [.. pieces.Where(one => one.Piece.Stage == stage)];

    private static IEnumerable<string> Line<T>(string title, List<T> all, Func<T, string> words, int most)
    {
        if (all.Count > 0)
        {
            var shown = all.Count <= most + 1 ? all.Count : most;
            var more = all.Count > shown ? $" and {all.Count - shown} more" : "";
            yield return $"{title}, {all.Count}: {string.Join(", ", all.Take(shown).Select(words))}{more}.";
        }
    }

    private static string Where(PieceStanding one) =>
        one.Piece.Shelf is { } shelf ? $"{one.Piece.Number} ({Labels.Short(shelf)})" : $"{one.Piece.Number}";

    // Recoat until is a call for a hand, and so comes before the day of curing.
    private static string Coated(PieceStanding one, Dictionary<int, DateTimeOffset> windows, StudioMoment moment) =>
        windows.TryGetValue(one.Piece.Number, out var closes)
            ? $"{Where(one)} recoat until "
                + moment.Zone.LocalOf(closes).ToString("ddd HH:mm", CultureInfo.InvariantCulture)
            : $"{Where(one)} {one.InList}";

    // Windows that have opened and not closed.
    private static Dictionary<int, DateTimeOffset> Windows(
        List<PieceStanding> pieces, Studio studio, DateTimeOffset now) =>
        CoatReckoning.Of([.. In(pieces, Stage.Coated).Select(one => one.Piece.Number)], studio.View, studio.Practice)
            .Where(coat => coat is { HasFailed: false, IsSanded: false } && coat.KnownWindow?.IsOpen(now) == true)
            .ToDictionary(coat => coat.Piece, coat => coat.KnownWindow!.ClosesFrom);

    private static string Low(ShelfNeed need) => Labels.Short(need.Material.Name)
        + (need.Level.IsOut ? " none" : $" {Show.Amount(need.Level.Left)}")
        + (need.IsOrdered ? " (ordered)" : "");
}
