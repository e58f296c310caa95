using StudioBot.Craft.Drying;

namespace StudioBot.Craft.Coats;

/// <summary>What reports teach of a resin's pace, where who reports may have come late: it was so by then.</summary>
/// <remarks>
/// With μ the logarithm of the pace, a report in time lies at μ, scattered by coat and by looking, normal with s; a
/// late one lies behind what was to be reported by an exponential in logs of mean ln 2 (twice as long, from memory).
/// How many of a studio's reports come in time is not known beforehand: a quarter, a half, three quarters or all, as
/// likely each. Both are taken together over a grid of μ, and the share is summed out, so that a late report is hardly
/// more than an upper bound, unless many agree. Where a look before is on record that found it not so yet, nothing is
/// guessed of how late the report came: it was so somewhere between both looks (interval-censored), but for one look in
/// fifty that errs (from memory).
/// </remarks>
internal static class ReportedPace
{
    /// <summary>How far studios lie apart, in logs: together with the scatter of a coat it makes a sheet's 3 to 6 h
    /// four times of five (common practice).</summary>
    public const double BetweenStudios = 0.225;

    /// <summary>How one coat scatters, in logs (common practice).</summary>
    public const double BetweenCoats = 0.15;

    // As one looks only now and then, in logs (common practice).
    private const double Looking = 0.20;

    // A normal 80 % interval.
    private const double EightOfTen = 1.2816;

    private const double OfStudios = BetweenStudios * BetweenStudios;
    private const double OfCoats = BetweenCoats * BetweenCoats;
    private const double Errs = 0.02;
    private const double Step = 0.025;
    private const int Steps = 97;
    private static readonly double Lateness = Math.Log(2);
    private static readonly double Scatter = Math.Sqrt(BetweenCoats * BetweenCoats + Looking * Looking);
    private static readonly double[] InTime = [0.25, 0.5, 0.75, 1];

    /// <summary>How wide the interval of the next one is against that of a studio that reported nothing, above 0 up to
    /// 1.</summary>
    /// <param name="variance">That of μ.</param>
    public static double Narrowing(double variance) => Math.Sqrt((variance + OfCoats) / (OfStudios + OfCoats));

    /// <summary>Four times of five the next one lies no farther from the middle than this, in logs.</summary>
    /// <param name="narrowing">How wide that is against a studio that reported nothing.</param>
    public static double Half(double narrowing) => EightOfTen * Math.Sqrt(OfStudios + OfCoats) * narrowing;

    /// <summary>The mean of μ and its variance.</summary>
    /// <param name="reports">Each with its ratio from a third to three.</param>
    public static (double Mean, double Variance) Of(IReadOnlyList<PaceReport> reports)
    {
        var weights = new double[InTime.Length * Steps];
        for (var at = 0; at < Steps; at++)
        {
            var pace = Pace(at);
            var before = -pace * pace / (2 * BetweenStudios * BetweenStudios);
            for (var share = 0; share < InTime.Length; share++)
            {
                weights[share * Steps + at] = before;
            }

            foreach (var report in reports)
            {
                var (prompt, late) = Weights(report, pace);
                for (var share = 0; share < InTime.Length; share++)
                {
                    weights[share * Steps + at] += Math.Log(InTime[share] * prompt + (1 - InTime[share]) * late);
                }
            }
        }

        LogWeights.Normalise(weights);
        var mean = weights.Select((weight, at) => weight * Pace(at % Steps)).Sum();
        return (mean, weights.Select((weight, at) => weight * Math.Pow(Pace(at % Steps) - mean, 2)).Sum());
    }

    // Of one that came in time and of one that came late; alike where the look before says how late it may be.
    private static (double Prompt, double Late) Weights(PaceReport report, double pace)
    {
        var off = Math.Log(report.Ratio) - pace;
        if (report.NotYet is not { } before)
        {
            return (Prompt(off), Late(off));
        }

        var between = NormalCurve.Below(off / BetweenCoats)
            - NormalCurve.Below((Math.Log(before) - pace) / BetweenCoats);
        var either = Errs + (1 - Errs) * between;
        return (either, either);
    }

    private static double Pace(int at) => (at - (Steps - 1) / 2) * Step;

    private static double Prompt(double off) =>
        Math.Exp(-off * off / (2 * Scatter * Scatter)) / (Scatter * Math.Sqrt(2 * Math.PI));

    // A normal and an exponential added up (the exponentially modified normal distribution).
    private static double Late(double off) =>
        Math.Exp(Scatter * Scatter / (2 * Lateness * Lateness) - off / Lateness) / Lateness
            * NormalCurve.Below(off / Scatter - Scatter / Lateness);
}
