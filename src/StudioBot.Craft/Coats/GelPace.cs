namespace StudioBot.Craft.Coats;

/// <summary>How long a resin can be worked here, as a multiple of its sheet's time: learnt from when it gelled. The
/// sheet stays the most: it is only ever shortened.</summary>
/// <remarks>One factor a resin, log-normal, as <see cref="CurePace"/> has it: <see cref="ReportedPace"/>. Nobody sees
/// the moment of the gel, so what is found gelled late is hardly more than an upper bound.</remarks>
/// <param name="Factor">What the sheet's times would be multiplied by, from a third to three times.</param>
/// <param name="Narrowing">How wide the interval of the next one is against that of a studio that reported nothing,
/// above 0 up to 1.</param>
/// <param name="Reports">How many reports it rests on; 0 is the sheet alone.</param>
/// <param name="Trend">How much later than the sheet the last three gelled, in the median, negative where it was
/// earlier; none where they did not all lie on one side of it, or are fewer.</param>
public sealed record GelPace(double Factor, double Narrowing, int Reports, TimeSpan? Trend)
{
    private const int Enough = 3;
    private static readonly double Farthest = Math.Log(3);

    /// <summary>The sheet alone.</summary>
    public static GelPace OfSheet { get; } = new(1, 1, 0, null);

    /// <summary>What the sheet's times are multiplied by: at most 1.</summary>
    public double Shortened => Math.Min(1, Factor);

    /// <summary>Learns from reports of one resin, the earliest first.</summary>
    public static GelPace From(IEnumerable<GelReport> reports)
    {
        GelReport[] used = [.. reports.Where(report => !IsSlip(report))];
        if (used.Length == 0)
        {
            return OfSheet;
        }

        var (mean, variance) = ReportedPace.Of([.. used.Select(report => new PaceReport(report.Ratio))]);
        return new GelPace(Math.Exp(mean), ReportedPace.Narrowing(variance), used.Length, TrendOf(used));
    }

    /// <summary>Between which times the next one gels, four times of five: a foretelling, which the sheet does not
    /// bound.</summary>
    /// <param name="sheet">The sheet's time, as warm as it is; above zero.</param>
    public (TimeSpan Early, TimeSpan Late) Between(TimeSpan sheet)
    {
        var half = Math.Exp(ReportedPace.Half(Narrowing));
        return (sheet * Factor / half, sheet * Factor * half);
    }

    /// <summary>Whether a report is three times the sheet's time or a third of it: late, a cup that heated itself, or a
    /// figure that slipped.</summary>
    public static bool IsSlip(GelReport report) => Math.Abs(Math.Log(report.Ratio)) >= Farthest;

    /// <summary>The sheet's time as it is here; never longer.</summary>
    public WorkingTime Over(WorkingTime sheet) =>
        new(sheet.Likely * Shortened, sheet.Shortest * Shortened, sheet.Longest * Shortened);

    /// <summary>A time of the sheet, with its caution where it has one, as it is here; never longer.</summary>
    public Finding<WorkingTime> Over(Finding<WorkingTime> sheet) => sheet switch
    {
        Finding<WorkingTime>.Found found => new Finding<WorkingTime>.Found(Over(found.Value)),
        Finding<WorkingTime>.Cautioned(var time, var caution) =>
            new Finding<WorkingTime>.Cautioned(Over(time), caution),
        _ => sheet,
    };

    private static TimeSpan? TrendOf(GelReport[] used)
    {
        var last = used.TakeLast(Enough).Select(report => report.After - report.Sheet).Order().ToList();
        return last.Count == Enough && (last[0] > TimeSpan.Zero || last[^1] < TimeSpan.Zero) ? last[1] : null;
    }
}
