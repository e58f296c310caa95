using System.Text.RegularExpressions;
using StudioBot.Craft.Coats;
using StudioBot.Craft.Practice;
using StudioBot.Records;
using StudioBot.Records.Pieces;
using StudioBot.Records.Rooms;

namespace StudioBot.Chat.Coats;

/// <summary>How long this studio's resins take, by what was noted of its coats: <c>17 tacky</c>.</summary>
internal sealed partial class CurePaces
{
    // Older ones were other lots (common practice).
    private const int MostReports = 40;

    private readonly Dictionary<string, CurePace> _paces;

    private CurePaces(Dictionary<string, CurePace> paces) => _paces = paces;

    /// <summary>As the records stand now.</summary>
    public static CurePaces Of(StudioView view, TradePractice practice)
    {
        List<int> pieces = [.. view.Pieces.Noted(Tacky, MostReports)];
        if (pieces.Count == 0)
        {
            return new CurePaces([]);
        }

        List<List<PieceLine>> all = [.. view.Pieces.Lines(pieces).GroupBy(line => line.Number)
            .Select(own => own.ToList())];
        var since = all.SelectMany(own => own).Select(line => line.At).DefaultIfEmpty().Min();
        var readings = view.Rooms.Readings(since - CoatReckoning.OldestAir);
        var rooms = Recording.PiecePlace.Rooms(view);
        return new CurePaces(all
            .SelectMany(own => Ratios(own, readings, rooms, practice))
            .OrderBy(one => one.At)
            .GroupBy(one => one.System)
            .ToDictionary(
                same => same.Key, same => CurePace.From(same.Select(one => one.Ratio).TakeLast(MostReports))));
    }

    /// <summary>That of a resin; its sheet's where nothing was noted.</summary>
    public CurePace Of(ResinSystem system) => _paces.GetValueOrDefault(system.Name, CurePace.OfSheet);

    /// <summary>Whether a note says that a coat is tacky, and nothing else.</summary>
    public static bool IsTacky(string note) => Sign().IsMatch(note);

    private const string Tacky = "tacky";

    // The first on a coat: later ones only say that it is so still. One that failed was mixed or cured wrong.
    private static IEnumerable<(DateTimeOffset At, string System, double Ratio)> Ratios(
        List<PieceLine> lines,
        IReadOnlyList<RoomReading> readings,
        Func<string?, string?> rooms,
        TradePractice practice)
    {
        if (lines.Any(line => line.What is PieceEvent.Failed))
        {
            yield break;
        }

        HashSet<DateTimeOffset> told = [];
        for (var at = 0; at < lines.Count; at++)
        {
            if (lines[at].What is PieceEvent.Note { Words: var note }
                && IsTacky(note)
                && CoatReckoning.Of([.. lines.Take(at)], readings, rooms, practice)
                    is { HasFailed: false, IsSanded: false } coat
                && told.Add(coat.LaidAt)
                && CurePace.RatioOf(
                    lines[at].At, CoatReckoning.Times(coat.System), coat.LaidAt, coat.Film) is { } ratio)
            {
                yield return (lines[at].At, coat.System.Name, ratio);
            }
        }
    }

    [GeneratedRegex(
        @"^(?:(?:it|is|it's|its|now|just|has|gone|already) )*tacky(?: now| already)?[.!]?$",
        RegexOptions.IgnoreCase | RegexOptions.CultureInvariant | RegexOptions.NonBacktracking)]
    private static partial Regex Sign();
}
