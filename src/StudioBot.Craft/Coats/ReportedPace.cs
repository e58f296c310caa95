using StudioBot.Craft.Drying;

namespace StudioBot.Craft.Coats;

/// <summary>What reports teach of a resin's pace, where who reports may have come late: it was so by then.</summary>
/// <remarks>
/// With μ the logarithm of the pace, a report in time lies at μ, scattered by coat and by looking, normal with s; a
/// late one lies behind what was to be reported by an exponential in logs of mean ln 2 (twice as long, from memory).
/// How many of a studio's reports come in time is not known beforehand: a quarter, a half, three quarters or all, as
/// likely each. Both are taken together over a grid of μ, and the share is summed out, so that a late report is hardly
/// more than an upper bound, unless many agree.
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

    private const double Step = 0.025;
    private const int Steps = 97;
    private static readonly double Lateness = Math.Log(2);
    private static readonly double Scatter = Math.Sqrt(BetweenCoats * BetweenCoats + Looking * Looking);
    private static readonly double[] InTime = [0.25, 0.5, 0.75, 1];

    /// <summary>The mean of μ and its variance.</summary>
    /// <param name="logs">The logarithms of what the reports came to over the sheet's time, from −ln 3 to ln 3.</param>
    public static (double Mean, double Variance) Of(IReadOnlyList<double> logs)
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

            foreach (var log in logs)
            {
                var (prompt, late) = (Prompt(log - pace), Late(log - pace));
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

    private static double Pace(int at) => (at - (Steps - 1) / 2) * Step;

    private static double Prompt(double off) =>
        Math.Exp(-off * off / (2 * Scatter * Scatter)) / (Scatter * Math.Sqrt(2 * Math.PI));

    // A normal and an exponential added up (the exponentially modified normal distribution).
    private static double Late(double off) =>
        Math.Exp(Scatter * Scatter / (2 * Lateness * Lateness) - off / Lateness) / Lateness
            * NormalCurve.Below(off / Scatter - Scatter / Lateness);
}
