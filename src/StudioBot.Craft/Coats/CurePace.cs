namespace StudioBot.Craft.Coats;

/// <summary>How long a resin takes here, as a multiple of its sheet's times: learnt from coats that were reported
/// tacky. The sheet is only ever narrowed.</summary>
/// <remarks>
/// One factor a resin, log-normal: each report gives r, the time gone at the sheet's temperature over the geometric
/// middle of the sheet's hours of opening. What comes late bounds more than it tells: <see cref="ReportedPace"/>. What
/// is three times the sheet's or a third of it tells of a fault or a slip, and not of the pace.
/// </remarks>
/// <param name="Factor">What the sheet's times are multiplied by, from a half to twice.</param>
/// <param name="Narrowing">How wide the interval of the next coat is against the sheet's own, above 0 up to 1.</param>
/// <param name="Reports">How many reports it rests on; 0 is the sheet alone.</param>
public sealed record CurePace(double Factor, double Narrowing, int Reports)
{
    private const double Slowest = 2;
    private const int Enough = 3;
    private static readonly double Farthest = Math.Log(3);

    /// <summary>The sheet alone.</summary>
    public static CurePace OfSheet { get; } = new(1, 1, 0);

    /// <summary>Learns from what the reports of one resin came to, with no look before any of them.</summary>
    /// <param name="ratios">Of <see cref="RatioOf"/>, each above zero.</param>
    public static CurePace From(IEnumerable<double> ratios) => FromLooks(ratios.Select(ratio => new PaceReport(ratio)));

    /// <summary>Learns from the reports of one resin.</summary>
    /// <param name="reports">With ratios of <see cref="RatioOf"/>.</param>
    public static CurePace FromLooks(IEnumerable<PaceReport> reports)
    {
        PaceReport[] used = [.. reports.Where(report => !IsSlip(report.Ratio))];
        if (used.Length == 0)
        {
            return OfSheet;
        }

        var (mean, variance) = ReportedPace.Of(used);
        return new CurePace(
            Math.Clamp(Math.Exp(mean), 1 / Slowest, Slowest),
            ReportedPace.Narrowing(variance),
            used.Length);
    }

    /// <summary>Whether a report is three times the middle of the sheet's hours or a third of it: a fault, or a figure
    /// that slipped.</summary>
    /// <param name="ratio">Of <see cref="RatioOf"/>, above zero.</param>
    public static bool IsSlip(double ratio) => Math.Abs(Math.Log(ratio)) >= Farthest;

    /// <summary>The time gone on a coat when it was reported tacky, over what its sheet says of it.</summary>
    /// <param name="at">When.</param>
    /// <param name="sheet">The sheet's hours.</param>
    /// <param name="poured">When the coat was poured.</param>
    /// <param name="film">At least one temperature; each reading's time is carried to the sheet's by Arrhenius with 55
    /// kJ/mol.</param>
    /// <returns>Above zero; none where the film was colder than 10 °C all along or the report came before the
    /// pour.</returns>
    public static double? RatioOf(
        DateTimeOffset at,
        CureTimes sheet,
        DateTimeOffset poured,
        IReadOnlyList<FilmReading> film)
    {
        var gone = new FilmWarmth(poured, film).Gone(
            at,
            met => met.Celsius < CureRange.ColdestCelsius ? 0 : ActivationEnergy.Usual.Speed(met, sheet.At));
        return gone > TimeSpan.Zero ? gone / Middle(sheet.OpensFrom, sheet.OpensBy) : null;
    }

    /// <summary>The sheet's hours as they are here.</summary>
    /// <remarks>It opens no earlier than the sheet's earliest hour, and earlier than its latest only from three reports
    /// on. The close comes earlier where the resin is quicker, and never later than the sheet's: nobody reports it, and
    /// a coat too late does not bond. Moving a piece and full cure come later where it is slower, and never
    /// earlier.</remarks>
    public CureTimes Over(CureTimes sheet)
    {
        var (opens, opened) = Band(sheet.OpensFrom, sheet.OpensBy);
        var (closes, closed) = Band(sheet.ClosesFrom, sheet.ClosesBy);
        var slower = Math.Max(1, Factor);
        return sheet with
        {
            OpensFrom = Later(opens, sheet.OpensFrom),
            OpensBy = Later(opened, Reports >= Enough ? sheet.OpensFrom : sheet.OpensBy),
            ClosesFrom = closes < sheet.ClosesFrom ? closes : sheet.ClosesFrom,
            ClosesBy = closed < sheet.ClosesBy ? closed : sheet.ClosesBy,
            Handling = sheet.Handling * slower,
            FullCure = sheet.FullCure * slower,
        };
    }

    private static TimeSpan Later(TimeSpan one, TimeSpan other) => one > other ? one : other;

    private (TimeSpan Early, TimeSpan Late) Band(TimeSpan early, TimeSpan late)
    {
        var half = Math.Pow(late / early, Narrowing / 2);
        var middle = Middle(early, late) * Factor;
        return (middle / half, middle * half);
    }

    private static TimeSpan Middle(TimeSpan early, TimeSpan late) => early * Math.Sqrt(late / early);
}
