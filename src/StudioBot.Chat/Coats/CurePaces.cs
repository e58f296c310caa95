using System.Text.RegularExpressions;
using StudioBot.Chat.Learning;
using StudioBot.Craft.Coats;
using StudioBot.Craft.Practice;
using StudioBot.Records;

namespace StudioBot.Chat.Coats;

/// <summary>How long this studio's resins take, by what was noted of its coats: <c>17 tacky</c>.</summary>
internal sealed partial class CurePaces
{
    // Older ones were other lots (common practice).
    private const int MostReports = 40;

    private readonly Dictionary<string, CurePace> _paces;

    private CurePaces(Dictionary<string, CurePace> paces) => _paces = paces;

    /// <summary>As the records stand now.</summary>
    public static CurePaces Of(StudioView view, TradePractice practice) =>
        new(CoatSign.Of(Tacky, IsTacky, MostReports, view, practice)
            .Select(sign => (sign.Coat.System, Ratio: CurePace.RatioOf(
                sign.At, CoatReckoning.Times(sign.Coat.System), sign.Coat.LaidAt, sign.Coat.Film)))
            .Where(one => one.Ratio is not null)
            .GroupBy(one => one.System.Name)
            .ToDictionary(
                same => same.Key, same => CurePace.From(same.Select(one => one.Ratio!.Value).TakeLast(MostReports))));

    /// <summary>When each coat that was noted tacky was to be so, by the notes before it, against when it was noted: in
    /// hours at the temperature of its sheet. What is three times off tells of a fault or a slip.</summary>
    public static IReadOnlyList<PastGuess> Past(StudioView view, TradePractice practice) =>
        [.. CoatSign.Of(Tacky, IsTacky, MostReports, view, practice)
            .GroupBy(sign => sign.Coat.System.Name)
            .SelectMany(Past)
            .OrderBy(one => one.At)];

    private static IEnumerable<PastGuess> Past(IEnumerable<CoatSign> signs)
    {
        List<(DateTimeOffset At, double Ratio)> before = [];
        foreach (var (at, coat) in signs)
        {
            var sheet = CoatReckoning.Times(coat.System);
            if (CurePace.RatioOf(at, sheet, coat.LaidAt, coat.Film) is not { } ratio)
            {
                continue;
            }

            // What was noted since the coat was laid nobody could go by then.
            var told = CurePace.From(before.Where(one => one.At < coat.LaidAt).Select(one => one.Ratio)).Over(sheet);
            if (CurePace.From([ratio]).Reports > 0)
            {
                yield return new PastGuess(
                    $"piece {coat.Piece}",
                    coat.LaidAt,
                    ratio * Middle(sheet),
                    Middle(told),
                    Middle(sheet),
                    told.OpensFrom.TotalHours,
                    told.OpensBy.TotalHours);
            }

            before.Add((at, ratio));
        }
    }

    private static double Middle(CureTimes times) => Math.Sqrt(times.OpensFrom.TotalHours * times.OpensBy.TotalHours);

    /// <summary>That of a resin; its sheet's where nothing was noted.</summary>
    public CurePace Of(ResinSystem system) => _paces.GetValueOrDefault(system.Name, CurePace.OfSheet);

    /// <summary>Whether a note says that a coat is tacky, and nothing else.</summary>
    public static bool IsTacky(string note) => Sign().IsMatch(note);

    /// <summary>The note that says so.</summary>
    public const string Tacky = "tacky";

    [GeneratedRegex(
        @"^(?:(?:it|is|it's|its|now|just|has|gone|already) )*tacky(?: now| already)?[.!]?$",
        RegexOptions.IgnoreCase | RegexOptions.CultureInvariant | RegexOptions.NonBacktracking)]
    private static partial Regex Sign();
}
