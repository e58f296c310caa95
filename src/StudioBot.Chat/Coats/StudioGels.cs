using System.Text.RegularExpressions;
using StudioBot.Chat.Learning;
using StudioBot.Chat.Replies;
using StudioBot.Craft.Coats;
using StudioBot.Craft.Practice;
using StudioBot.Records.Recipes;

namespace StudioBot.Chat.Coats;

/// <summary>How long this studio's resins can be worked, by when they gelled: <c>17 gelled</c>, <c>batch 14 gelled</c>.
/// </summary>
internal sealed partial class StudioGels
{
    // Older ones were other lots (common practice).
    private const int MostReports = 40;

    // The last of those left out.
    private const int MostNamed = 4;

    private readonly ILookup<string, Gel> _gels;

    private StudioGels(IEnumerable<Gel> gels) =>
        _gels = gels.OrderBy(gel => gel.At).ToLookup(gel => gel.System.Name);

    /// <summary>One report.</summary>
    /// <param name="What">Of what: 17, batch 14.</param>
    /// <param name="At">When it was seen.</param>
    /// <param name="System">The resin.</param>
    /// <param name="Report">How long it took, beside the sheet.</param>
    internal sealed record Gel(string What, DateTimeOffset At, ResinSystem System, GelReport Report);

    /// <summary>As the records stand now.</summary>
    public static StudioGels Of(Studio studio) => new(
        CoatSign.Of(Sign, IsGelled, _ => false, MostReports, studio.View, studio.Practice)
            .Select(sign => OfCoat(sign.Coat, sign.At))
            .Concat(OfBatches(studio))
            .OfType<Gel>());

    /// <summary>Whether a note says that a coat has gelled, and nothing else.</summary>
    public static bool IsGelled(string note) => Gelled().IsMatch(note);

    /// <summary>The note that says so.</summary>
    public const string Sign = "gelled";

    /// <summary>What a coat tells that has gelled by a moment; none where that was no later than the coat, or too cold.
    /// </summary>
    public static Gel? OfCoat(CoatReckoning coat, DateTimeOffset at) =>
        GelReport.Of(coat.LaidAt, at, new PotLife(coat.System.WorkingTime.Value, coat.System.TimesAt.Value), coat.Film)
            is { } report
            ? new Gel($"{coat.Piece}", at, coat.System, report)
            : null;

    /// <summary>When each cup was to gel, by what was seen before it was mixed, against when it was seen, in minutes.
    /// What is three times off tells of a slip.</summary>
    public static IReadOnlyList<PastGuess> Past(Studio studio) =>
        [.. Of(studio)._gels.SelectMany(Past).OrderBy(one => one.At)];

    private static IEnumerable<PastGuess> Past(IEnumerable<Gel> gels)
    {
        List<Gel> before = [];
        foreach (var gel in gels)
        {
            var (mixed, sheet) = (gel.At - gel.Report.After, gel.Report.Sheet);
            if (!GelPace.IsSlip(gel.Report))
            {
                var pace = GelPace.From(before.Where(one => one.At < mixed).Select(one => one.Report));
                var (early, late) = pace.Between(sheet);
                yield return new PastGuess(
                    char.IsAsciiDigit(gel.What[0]) ? $"piece {gel.What}" : gel.What,
                    mixed,
                    gel.Report.After.TotalMinutes,
                    sheet.TotalMinutes * pace.Factor,
                    sheet.TotalMinutes,
                    early.TotalMinutes,
                    late.TotalMinutes);
            }

            before.Add(gel);
        }
    }

    /// <summary>How long this resin can be worked; its sheet's where nothing gelled.</summary>
    public GelPace Pace(ResinSystem system) =>
        GelPace.From(_gels[system.Name].TakeLast(MostReports).Select(gel => gel.Report));

    /// <summary>What was left out last, by name: 17 (3 min). Empty where nothing is.</summary>
    public string Slips(ResinSystem system) => string.Join(", ", _gels[system.Name].TakeLast(MostReports)
        .Where(gel => GelPace.IsSlip(gel.Report))
        .TakeLast(MostNamed)
        .Select(gel => $"{gel.What} ({Show.Time(gel.Report.After)})"));

    /// <summary>Your last three gelled 8 min before the sheet; empty where they say nothing.</summary>
    public static string Trend(GelPace pace) => pace.Trend is { } trend
        ? $"Your last three gelled {Show.Time(trend.Duration())} "
            + (trend < TimeSpan.Zero ? "before the sheet." : "after the sheet: its time stays.")
        : "";

    // The first of a batch: later ones only say that it is so still.
    private static IEnumerable<Gel?> OfBatches(Studio studio)
    {
        List<BatchGel> first = [.. studio.View.Batches.Gels(MostReports)
            .Where(gel => gel.Warmth is not null)
            .GroupBy(gel => gel.Batch)
            .Select(same => same.MinBy(gel => gel.At)!)];
        var resins = BatchResin.Of(
            [.. first.Select(gel => studio.View.Batches.Find(gel.Batch)).OfType<Batch>()], studio);
        return first.Select(gel => resins.GetValueOrDefault(gel.Batch) is { Against: null } resin
            ? OfBatch(gel, resin.System)
            : null);
    }

    /// <summary>What a batch tells that gelled; none where it was too cold.</summary>
    /// <param name="gel">With how warm it was.</param>
    /// <param name="system">The resin it is of.</param>
    public static Gel? OfBatch(BatchGel gel, ResinSystem system)
    {
        var (mixed, sheet) = (gel.At - gel.After, system.PotLife.Value);
        return GelReport.Of(
            mixed, gel.At, new PotLife(sheet.Time, sheet.At), [new FilmReading(mixed, gel.Warmth!.Value)])
            is { } report
            ? new Gel($"batch {gel.Batch}", gel.At, system, report)
            : null;
    }

    [GeneratedRegex(
        @"^(?:(?:it|is|it's|its|now|just|has|gone|already) )*gelled(?: now| already)?[.!]?$",
        RegexOptions.IgnoreCase | RegexOptions.CultureInvariant | RegexOptions.NonBacktracking)]
    private static partial Regex Gelled();
}
