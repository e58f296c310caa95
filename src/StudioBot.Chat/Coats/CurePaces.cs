using System.Text.RegularExpressions;
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

    /// <summary>That of a resin; its sheet's where nothing was noted.</summary>
    public CurePace Of(ResinSystem system) => _paces.GetValueOrDefault(system.Name, CurePace.OfSheet);

    /// <summary>Whether a note says that a coat is tacky, and nothing else.</summary>
    public static bool IsTacky(string note) => Sign().IsMatch(note);

    private const string Tacky = "tacky";

    [GeneratedRegex(
        @"^(?:(?:it|is|it's|its|now|just|has|gone|already) )*tacky(?: now| already)?[.!]?$",
        RegexOptions.IgnoreCase | RegexOptions.CultureInvariant | RegexOptions.NonBacktracking)]
    private static partial Regex Sign();
}
