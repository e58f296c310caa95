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

    private readonly Lazy<Dictionary<string, CurePace>> _paces;

    /// <summary>As the records stand when the first is asked for; they are read once.</summary>
    public CurePaces(StudioView view, TradePractice practice) =>
        _paces = new(() => CoatSign.Of(Tacky, IsTacky, IsNotTacky, MostReports, view, practice)
            .Select(sign => (sign.Coat.System, Report: ReportOf(sign)))
            .Where(one => one.Report is not null)
            .GroupBy(one => one.System.Name)
            .ToDictionary(
                same => same.Key,
                same => CurePace.FromLooks(same.Select(one => one.Report!.Value).TakeLast(MostReports))));

    /// <summary>When each coat that was noted tacky was to be so, by the notes before it, against when it was noted: in
    /// hours at the temperature of its sheet. What is three times off tells of a fault or a slip.</summary>
    public static IReadOnlyList<PastGuess> Past(StudioView view, TradePractice practice) =>
        [.. CoatSign.Of(Tacky, IsTacky, IsNotTacky, MostReports, view, practice)
            .GroupBy(sign => sign.Coat.System.Name)
            .SelectMany(Past)
            .OrderBy(one => one.At)];

    private static IEnumerable<PastGuess> Past(IEnumerable<CoatSign> signs)
    {
        List<(DateTimeOffset At, PaceReport Report)> before = [];
        foreach (var sign in signs)
        {
            var (coat, sheet) = (sign.Coat, CoatReckoning.Times(sign.Coat.System));
            if (ReportOf(sign) is not { } report)
            {
                continue;
            }

            // What was noted since the coat was laid nobody could go by then.
            var told = CurePace.FromLooks(before.Where(one => one.At < coat.LaidAt).Select(one => one.Report))
                .Over(sheet);
            if (!CurePace.IsSlip(report.Ratio))
            {
                yield return new PastGuess(
                    $"piece {coat.Piece}",
                    coat.LaidAt,
                    Moment(report) * Middle(sheet),
                    Middle(told),
                    Middle(sheet),
                    told.OpensFrom.TotalHours,
                    told.OpensBy.TotalHours);
            }

            before.Add((sign.At, report));
        }
    }

    // Between two looks, the middle of both; a look long before says little of when it was.
    private static double Moment(PaceReport report) =>
        Math.Sqrt(report.Ratio * Math.Max(report.NotYet ?? report.Ratio, report.Ratio / 2));

    private static PaceReport? ReportOf(CoatSign sign)
    {
        if (Ratio(sign.At) is not { } ratio)
        {
            return null;
        }

        var before = sign.NotYet is { } look ? Ratio(look) : null;
        return new PaceReport(ratio, before < ratio ? before : null);

        double? Ratio(DateTimeOffset at) =>
            CurePace.RatioOf(at, CoatReckoning.Times(sign.Coat.System), sign.Coat.LaidAt, sign.Coat.Film);
    }

    private static double Middle(CureTimes times) => Math.Sqrt(times.OpensFrom.TotalHours * times.OpensBy.TotalHours);

    /// <summary>That of a resin; its sheet's where nothing was noted.</summary>
    public CurePace Of(ResinSystem system) => _paces.Value.GetValueOrDefault(system.Name, CurePace.OfSheet);

    /// <summary>Whether a note says that a coat is tacky, and nothing else.</summary>
    public static bool IsTacky(string note) => Sign().IsMatch(note);

    /// <summary>Whether a note says that a coat is not tacky yet, and nothing else.</summary>
    public static bool IsNotTacky(string note) => NotYet().IsMatch(note);

    [GeneratedRegex(
        @"^(?:(?:it|is|it's|its|now|just|still) )*"
            + @"(?:not (?:yet )?tacky(?: yet)?|tacky not yet|(?:wet|runny|liquid) still)[.!]?$",
        RegexOptions.IgnoreCase | RegexOptions.CultureInvariant | RegexOptions.NonBacktracking)]
    private static partial Regex NotYet();

    /// <summary>The note that says so.</summary>
    public const string Tacky = "tacky";

    [GeneratedRegex(
        @"^(?:(?:it|is|it's|its|now|just|has|gone|already) )*tacky(?: now| already)?[.!]?$",
        RegexOptions.IgnoreCase | RegexOptions.CultureInvariant | RegexOptions.NonBacktracking)]
    private static partial Regex Sign();
}
