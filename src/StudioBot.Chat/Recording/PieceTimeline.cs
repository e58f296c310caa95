using StudioBot.Chat.Drying;
using StudioBot.Chat.Replies;
using StudioBot.Records.Pieces;

namespace StudioBot.Chat.Recording;

/// <summary>What happened to a piece, a line each.</summary>
internal static class PieceTimeline
{
    // What somebody typed is shown as it is, up to a few lines of a phone.
    private const int Longest = 240;

    // A page keeps room for its headline and a last line.
    private const int LinesOnAPage = LineBudget.Lines - 3;

    /// <summary>All that happened, the oldest first: 23 Nov weighed 640.4 g.</summary>
    public static IReadOnlyList<string> Of(Piece piece, IEnumerable<PieceLine> lines, StudioMoment moment)
    {
        List<PieceLine> all = [.. lines];
        var pour = all.Find(line => line.What is PieceEvent.Poured)?.ActId;
        return
        [
            .. all
                .Select(line => (At: line.ActId == pour ? piece.PouredAt : line.At, line.What))
                .OrderBy(line => line.At)
                .Select(line => $"{Show.Day(moment.Day(line.At))} {Words(line.What, moment)}"),
        ];
    }

    /// <summary>These lines on as many pages as a phone needs for them.</summary>
    public static IReadOnlyList<IReadOnlyList<string>> Pages(IReadOnlyList<string> lines)
    {
        List<IReadOnlyList<string>> pages = [];
        List<string> page = [];
        foreach (var line in lines)
        {
            if (page.Count > 0 && Height([.. page, line]) > LinesOnAPage)
            {
                pages.Add(page);
                page = [];
            }

            page.Add(line);
        }

        return page.Count > 0 ? [.. pages, page] : pages;
    }

    private static int Height(IReadOnlyList<string> lines) =>
        LineBudget.Of(new Reply([.. lines.Select(line => new Block.Line(line))]));

    private static string Words(PieceEvent what, StudioMoment moment) => what switch
    {
        PieceEvent.Poured(_, { } volume) => $"poured {Show.Volume(volume)}",
        PieceEvent.Poured => "poured",
        PieceEvent.Left(var volume) => $"left in cups {Show.Volume(volume)}",
        PieceEvent.Caught(var volume) => $"ran off {Show.Volume(volume)}",
        PieceEvent.Shelved(var shelf) => shelf is null ? "off its shelf" : $"on {shelf}",
        PieceEvent.Weighed(var mass) => $"weighed {Show.Mass(mass)}",
        PieceEvent.Bare(var mass) => $"bare panel {Show.Mass(mass)}",
        PieceEvent.Dry => "dry by hand",
        PieceEvent.NotYet({ } until) => $"not dry yet, wait to {Show.Day(moment.Day(until))}",
        PieceEvent.NotYet => "not dry yet",
        PieceEvent.Coated(var coat) => $"coated, {Show.Volume(coat.A)} A + {Show.Volume(coat.B)} B",
        PieceEvent.Failed(var why) => $"coat failed{Typed(why)}",
        PieceEvent.Sanded => "sanded",
        PieceEvent.Cured => "cured",
        PieceEvent.Staged(var stage) => $"set to {StageWords.Of(stage)}",
        PieceEvent.Note(var words) => $"note{Typed(words)}",
        PieceEvent.Photo(_, var words) => $"photo{Typed(words)}",
        PieceEvent.Due(var until, _, var words) => $"promised for {Show.Day(moment.Day(until))}{Typed(words)}",
        PieceEvent.Kept => "kept",
        PieceEvent.Sold(_, _, var words) => $"sold{Typed(words)}",
        PieceEvent.Bin(var why) => $"thrown away{Typed(why)}",
        _ => "",
    };

    private static string Typed(string? words) => string.IsNullOrEmpty(words) ? ""
        : words.Length > Longest ? $": {words[..Longest]}…"
        : $": {words}";
}
