using StudioBot.Craft.Units;

namespace StudioBot.Craft.Mixing;

/// <summary>
/// Rounds all parts together, because rounding them one by one breaks the ratio. First the smallest total that keeps
/// the ratio exactly on the step, if it costs at most a tenth more; else the step counts nearby with the least error.
/// </summary>
public static class ToolRounding
{
    private const double DearestExact = 1.10;

    // Ratios are spoken with three places at most: 2.5:1, 1.125:1.
    private const double Places = 1000;
    private const int Tries = 400;
    private const double Slack = 1e-9;

    /// <summary>Parts on the step of a tool, together never less than needed.</summary>
    /// <param name="ratio">By volume.</param>
    /// <param name="need">The least that will do; above zero.</param>
    /// <param name="step">The tool's: a spoon's 5 mL; above zero.</param>
    /// <exception cref="ArgumentException">A ratio by mass: a scale needs no steps.</exception>
    /// <exception cref="ArgumentOutOfRangeException">Nothing is needed, or the step is nothing.</exception>
    public static RoundedParts Of(MixRatio ratio, Volume need, Volume step)
    {
        Parts.Demand(ratio, RatioBy.Volume);
        ArgumentOutOfRangeException.ThrowIfLessThanOrEqual(need, default);
        ArgumentOutOfRangeException.ThrowIfLessThanOrEqual(step, default);

        var needed = need / step;
        var counts = Exact(ratio, needed) is { } exact && exact.Sum() <= needed * DearestExact
            ? exact
            : Nearby(ratio, needed);
        Volume[] parts = [.. counts.Select(count => count * step)];
        return new RoundedParts(parts, WorstError(ratio, parts));
    }

    /// <summary>The smallest total from <paramref name="need"/> up that keeps the ratio exactly on the step, however
    /// much more that is; null where no multiple of the step ever does.</summary>
    /// <exception cref="ArgumentException">A ratio by mass.</exception>
    public static RoundedParts? SmallestExact(MixRatio ratio, Volume need, Volume step)
    {
        Parts.Demand(ratio, RatioBy.Volume);
        return Exact(ratio, need / step) is { } counts
            ? new RoundedParts([.. counts.Select(count => count * step)], 0)
            : null;
    }

    /// <summary>The worst over pairs of |(x_i/x_j)/(p_i/p_j) − 1|.</summary>
    public static double WorstError(MixRatio ratio, IReadOnlyList<Volume> rounded)
    {
        double[] off = [.. rounded.Zip(ratio.Parts, (part, wanted) => part.Millilitres / wanted)];

        // The worst pair is the most generous part over the scantest: every other pair lies between.
        return off.Max() / off.Min() - 1;
    }

    /// <summary>How far half a division of the scale may put a mass off, as a fraction.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Nothing was weighed.</exception>
    public static double ScaleReadingError(Mass mass, Mass division)
    {
        ArgumentOutOfRangeException.ThrowIfLessThanOrEqual(mass, default);
        return division / 2 / mass;
    }

    private static double[]? Exact(MixRatio ratio, double needed)
    {
        double[] whole = [.. ratio.Parts.Select(part => Math.Round(part * Places))];
        if (whole.Zip(ratio.Parts, (rounded, part) => Math.Abs(rounded / Places / part - 1)).Max() > Slack)
        {
            return null;
        }

        var common = whole.Aggregate(CommonDivisor);
        var unit = whole.Sum() / common;
        var times = Math.Ceiling(needed / unit - Slack);
        return [.. whole.Select(part => part / common * times)];
    }

    private static double[] Nearby(MixRatio ratio, double needed)
    {
        double[] up =
        [
            .. ratio.Parts.Select((_, part) => Math.Max(1, Math.Ceiling(needed * ratio.Share(part) - Slack))),
        ];

        return Enumerable.Range(0, Tries + 1)
            .Select(attempt => needed * (1 + (DearestExact - 1) * attempt / Tries))
            .Select(total => ratio.Parts
                .Select((_, part) => Math.Max(1, Math.Round(total * ratio.Share(part))))
                .ToArray())
            .Where(counts => counts.Sum() >= needed - Slack && counts.Sum() <= needed * DearestExact)
            .DefaultIfEmpty(up)
            .OrderBy(counts => Error(ratio, counts))
            .ThenBy(counts => counts.Sum())
            .First();
    }

    private static double Error(MixRatio ratio, double[] counts)
    {
        double[] off = [.. counts.Zip(ratio.Parts, (count, part) => count / part)];
        return off.Max() / off.Min() - 1;
    }

    private static double CommonDivisor(double left, double right) =>
        right == 0 ? left : CommonDivisor(right, left % right);
}
