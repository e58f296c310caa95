using StudioBot.Craft.Units;

namespace StudioBot.Craft.Drying;

/// <summary>
/// The curve through a piece's weighings. It describes; the ready day comes from <see cref="ReadyOutlook"/>.
/// Weighings from
/// before the skin closed do not belong in it.
/// </summary>
/// <remarks>A single exponential is the late limit of diffusion in a sheet (from memory).</remarks>
public static class DryingFit
{
    // 4·√6·σ: the bend of three equal-spaced points has a deviation of √6·σ, and four of them count as seen.
    private static readonly double LeastBend = 4 * Math.Sqrt(6);

    /// <summary>What these weighings say, in any order.</summary>
    /// <param name="weighings">By elapsed time no two the same.</param>
    /// <param name="deviation">One weighing's standard deviation, above zero.</param>
    /// <param name="dry">From the bare panel, when it was weighed.</param>
    /// <param name="water">The water in the piece; only used with <paramref name="dry"/>.</param>
    public static Finding<DryingCurve> Of(
        IReadOnlyList<Weighing> weighings, Mass deviation, DryMass? dry = null, Mass water = default)
    {
        Weighing[] ordered = [.. weighings.OrderBy(weighing => weighing.Elapsed)];
        return ordered.Length switch
        {
            0 => Open("no weighings yet", "weigh it once the skin has closed"),
            1 => Open("one weighing is only a start", "weigh it again in a day"),
            2 when dry is null => Open(
                "two weighings need the bare panel's mass", "weigh it a third time, or the panel before the next pour"),
            2 => FromTwo(ordered[0], ordered[1], dry, water),
            3 when IsEven(ordered) => FromThree(ordered[0], ordered[1], ordered[2], deviation),
            _ => LeastSquares.Fit(ordered, deviation),
        };
    }

    /// <summary>τ = (x₂ − x₁)/ln((m₁ − m_∞)/(m₂ − m_∞)); only while more than 10 % of the water is left.</summary>
    private static Finding<DryingCurve> FromTwo(Weighing first, Weighing second, DryMass dry, Mass water)
    {
        var left = second.Mass.Grams - dry.Expected.Grams;
        if (left <= 2 * DryMass.OpenShareOfWater * water.Grams || left <= 0)
        {
            return Open("too little is left to tell it from the doubt in the dry mass", "weigh it a third time");
        }

        return Through(first, second, dry.Expected.Grams) is { } curve
            ? new Finding<DryingCurve>.Found(curve with
            {
                TauFrom = Through(first, second, dry.Expected.Grams + dry.Deviation.Grams)?.Tau ?? TimeSpan.Zero,
                TauTo = Through(first, second, dry.Expected.Grams - dry.Deviation.Grams)?.Tau ?? curve.Tau,
            })
            : Open("it lost nothing between the two", "check that it is the same piece, and weigh it again");
    }

    /// <summary>
    /// The closed form for three equally spaced weighings; its interval comes from moving each by ±σ.
    /// </summary>
    private static Finding<DryingCurve> FromThree(Weighing first, Weighing second, Weighing third, Mass deviation)
    {
        double[] grams = [first.Mass.Grams, second.Mass.Grams, third.Mass.Grams];
        if (Math.Abs(grams[0] - 2 * grams[1] + grams[2]) < LeastBend * deviation.Grams)
        {
            return Open("the loss has not bent yet", "weigh it again in a few days");
        }

        if (Closed(first.Elapsed, second.Elapsed, grams) is not { } curve)
        {
            return Open("it did not lose less and less: gained mass, another piece, or damp air", "weigh it again");
        }

        TimeSpan from = curve.Tau, to = curve.Tau;
        for (var i = 0; i < grams.Length; i++)
        {
            foreach (var shift in new[] { -deviation.Grams, deviation.Grams })
            {
                var held = grams[i];
                grams[i] = held + shift;
                if (Closed(first.Elapsed, second.Elapsed, grams) is { } moved)
                {
                    from = moved.Tau < from ? moved.Tau : from;
                    to = moved.Tau > to ? moved.Tau : to;
                }

                grams[i] = held;
            }
        }

        return new Finding<DryingCurve>.Found(curve with { TauFrom = from, TauTo = to });
    }

    /// <summary>No figure, because the weighings do not say.</summary>
    internal static Finding<DryingCurve> Open(string why, string instead) =>
        new Finding<DryingCurve>.None(NoFigure.Undetermined, why, instead);

    private static bool IsEven(Weighing[] three)
    {
        var first = three[1].Elapsed - three[0].Elapsed;
        var second = three[2].Elapsed - three[1].Elapsed;
        return (first - second).Duration() <= 1e-6 * first;
    }

    private static DryingCurve? Through(Weighing first, Weighing second, double dry)
    {
        var ratio = (first.Mass.Grams - dry) / (second.Mass.Grams - dry);
        if (dry < 0 || second.Mass.Grams <= dry || ratio <= 1)
        {
            return null;
        }

        var tau = (second.Elapsed - first.Elapsed) / Math.Log(ratio);
        var loss = (first.Mass.Grams - dry) * Math.Exp(first.Elapsed / tau);
        return new DryingCurve(Mass.FromGrams(dry), Mass.FromGrams(loss), tau, tau, tau);
    }

    private static DryingCurve? Closed(TimeSpan start, TimeSpan next, double[] m)
    {
        var r = (m[2] - m[1]) / (m[1] - m[0]);
        if (m[1] >= m[0] || r is not (> 0 and < 1))
        {
            return null;
        }

        var tau = (next - start) / -Math.Log(r);
        var dry = m[2] - (m[2] - m[1]) * (m[2] - m[1]) / (m[0] - 2 * m[1] + m[2]);
        return dry < 0 ? null : new DryingCurve(
            Mass.FromGrams(dry), Mass.FromGrams((m[0] - dry) * Math.Exp(start / tau)), tau, tau, tau);
    }
}
