using StudioBot.Craft.Units;

namespace StudioBot.Craft.Pours;

/// <summary>The need per face, learnt from a technique's default and the studio's own pours.</summary>
/// <param name="Mean">The need expected.</param>
/// <param name="SdOfMean">How sure that is, as a standard deviation.</param>
/// <param name="Spread">How far one pour scatters, as a standard deviation.</param>
/// <param name="OwnPours">How many pours it rests on, short ones included; 0 is the technique's default alone.</param>
public sealed record FilmEstimate(Length Mean, Length SdOfMean, Length Spread, int OwnPours)
{
    // The normal quantile of 0.80.
    private const double FourOfFive = 0.84;

    // From so many pours on, their own scatter is believed; the belief in the old one is worth four (from memory).
    private const int EnoughForSpread = 5;
    private const double WeightOfSpread = 4;

    // Beyond this factor of face over rim two pieces are not alike (common practice).
    private const double Alike = 1.5;
    private const double WidenedBy = 1.5;

    // The grid for short pours, in millimetres around the prior mean.
    private const double GridReach = 6;
    private const double GridStep = 0.005;

    /// <summary>How far the next single pour may lie off, as a standard deviation: σ·√(1 + 1/(M + n)).</summary>
    public Length NextPourSd => Length.FromMillimetres(
        Math.Sqrt(Math.Pow(Spread.Millimetres, 2) + Math.Pow(SdOfMean.Millimetres, 2)));

    /// <summary>What to plan with: enough for four pours out of five, μ + 0.84·sd.</summary>
    public Length EnoughFourTimesOfFive => At(FourOfFive);

    /// <summary>So many standard deviations of the next pour above its mean, or below; not under nothing.</summary>
    public Length At(double deviations) =>
        Length.FromMillimetres(Math.Max(0, Mean.Millimetres + deviations * NextPourSd.Millimetres));

    /// <summary>Learns from the pours on pieces like this one.</summary>
    /// <remarks>
    /// Where no piece is alike (face over rim within a factor of 1.5) all count, and the spread is half as wide again.
    /// </remarks>
    /// <param name="prior">What is believed without them.</param>
    /// <param name="pours">The studio's pours of one technique, each within 0.3–12 mm.</param>
    /// <param name="faceOverRim">Of the piece that is planned.</param>
    public static FilmEstimate From(FilmPrior prior, IReadOnlyList<ObservedPour> pours, Length faceOverRim)
    {
        List<ObservedPour> alike = [.. pours.Where(pour => Ratio(pour.FaceOverRim, faceOverRim) <= Alike)];
        return alike.Count > 0 || pours.Count == 0
            ? From(prior, alike)
            : From(prior with { Spread = prior.Spread * WidenedBy }, pours);
    }

    /// <summary>Learns from all of these pours.</summary>
    /// <remarks>
    /// Normal-normal update, the prior worth M pours: μ = (M·μ₀ + Σx)/(M + n), sd σ/√(M + n). From five pours on σ is
    /// estimated again: σ² = (ν₀σ₀² + SS + M·n/(M + n)·(x̄ − μ₀)²)/(ν₀ + n) (from memory). A pour that ran short
    /// only says
    /// that the need is more; leaving it out, or averaging it in, would bias the film low, so then the posterior is
    /// taken from a grid: −M(μ − μ₀)²/2σ² − Σ(x − μ)²/2σ² + Σ ln Φ((μ − c)/σ).
    /// </remarks>
    /// <param name="prior">What is believed without them.</param>
    /// <param name="pours">The studio's pours of one technique, each within 0.3–12 mm.</param>
    public static FilmEstimate From(FilmPrior prior, IReadOnlyList<ObservedPour> pours)
    {
        double[] enough = Used(pours, PourEnd.Enough);
        double[] tooLittle = Used(pours, PourEnd.RanShort);
        var weight = prior.Weight + enough.Length;
        var mean = (prior.Weight * prior.Mean.Millimetres + enough.Sum()) / weight;
        var spread = SpreadOf(prior, enough);
        var sd = spread / Math.Sqrt(weight);
        if (tooLittle.Length > 0)
        {
            (mean, sd) = OnGrid(prior.Mean.Millimetres, mean, sd, spread, tooLittle);
        }

        return new FilmEstimate(
            Length.FromMillimetres(mean), Length.FromMillimetres(sd), Length.FromMillimetres(spread), pours.Count);
    }

    private static double SpreadOf(FilmPrior prior, double[] used)
    {
        if (used.Length < EnoughForSpread)
        {
            return prior.Spread.Millimetres;
        }

        var (n, mean) = (used.Length, used.Average());
        var squares = used.Sum(x => (x - mean) * (x - mean));
        var shift = prior.Weight * n / (prior.Weight + n) * Math.Pow(mean - prior.Mean.Millimetres, 2);
        var believed = WeightOfSpread * Math.Pow(prior.Spread.Millimetres, 2);
        return Math.Sqrt((believed + squares + shift) / (WeightOfSpread + n));
    }

    private static (double Mean, double Sd) OnGrid(
        double middle, double mean, double sd, double spread, double[] tooLittle)
    {
        // Prior and full pours together are one normal, so the grid only has to fold in the short ones.
        double LogWeight(double need) =>
            -Math.Pow((need - mean) / sd, 2) / 2
            + tooLittle.Sum(used => NormalTail.LogBelow((need - used) / spread));

        double[] needs = [.. Enumerable.Range(0, (int)(2 * GridReach / GridStep) + 1)
            .Select(node => middle - GridReach + node * GridStep)];
        double[] logs = [.. needs.Select(LogWeight)];
        var most = logs.Max();
        double[] weights = [.. logs.Select(log => Math.Exp(log - most))];
        var whole = weights.Sum();
        var centre = needs.Zip(weights, (need, weight) => need * weight).Sum() / whole;
        var variance = needs.Zip(weights, (need, weight) => weight * Math.Pow(need - centre, 2)).Sum() / whole;
        return (centre, Math.Sqrt(variance));
    }

    private static double[] Used(IReadOnlyList<ObservedPour> pours, PourEnd end) =>
        [.. pours.Where(pour => pour.End == end).Select(pour => pour.Used.Millimetres)];

    private static double Ratio(Length one, Length other) => Math.Max(one / other, other / one);
}
