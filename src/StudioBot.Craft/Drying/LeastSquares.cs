using StudioBot.Craft.Units;

namespace StudioBot.Craft.Drying;

/// <summary>
/// One exponential through four or more weighings, or three unevenly spaced: τ scanned on a log grid and refined by
/// golden
/// section, m_∞ and Δ by linear least squares for each τ.
/// </summary>
internal static class LeastSquares
{
    private const int Steps = 400;
    private const double Widest = 20;           // no upper end within so many times τ: no interval
    private const double NinetyFive = 3.84;     // the 95 % point of chi-squared with one degree of freedom
    private const double Misfit = 9;            // (3σ)² a degree of freedom: not one exponential yet

    public static Finding<DryingCurve> Fit(Weighing[] ordered, Mass deviation)
    {
        double[] x = [.. ordered.Select(weighing => weighing.Elapsed.TotalHours)];
        double[] m = [.. ordered.Select(weighing => weighing.Mass.Grams)];
        var span = x[^1] - x[0];
        if (span <= 0)
        {
            return DryingFit.Open("all were weighed at one moment", "weigh it again in a day");
        }

        var tau = Best(x, m, span);
        var best = Line(x, m, tau);
        if (best.Loss <= 0 || best.Dry < 0)
        {
            return DryingFit.Open("it did not lose mass: another piece, or damp air", "weigh it again");
        }

        var variance = deviation.Grams * deviation.Grams;
        var allowed = best.Squares + NinetyFive * variance;
        var (low, high) = (End(x, m, tau, tau / Widest, allowed), End(x, m, tau, tau * Widest, allowed));
        if (high is null)
        {
            return DryingFit.Open("the loss has not bent yet", "weigh it again in a few days");
        }

        var (from, to) = (low ?? 0, high.Value);
        var free = x.Length - 3;
        var strays = free > 0 && best.Squares / free > Misfit * variance;
        if (strays)
        {
            (from, to) = (from * from / tau, to * to / tau);
        }

        var loss = best.Loss * Math.Exp(x[0] / tau);
        if (!double.IsFinite(loss))
        {
            return DryingFit.Open("nothing is being lost any more", "feel it: it may be dry");
        }

        return new Finding<DryingCurve>.Found(new DryingCurve(
            Mass.FromGrams(best.Dry), Mass.FromGrams(loss),
            TimeSpan.FromHours(tau), TimeSpan.FromHours(from), TimeSpan.FromHours(to), !strays));
    }

    /// <summary>The course with this τ that runs closest to the weighings.</summary>
    public static DryingBand.Course Through(Weighing[] ordered, TimeSpan tau)
    {
        var (dry, loss, _) = Line(
            [.. ordered.Select(weighing => weighing.Elapsed.TotalHours)],
            [.. ordered.Select(weighing => weighing.Mass.Grams)],
            tau.TotalHours);
        return new DryingBand.Course(dry, loss, ordered[0].Elapsed, tau);
    }

    private static double Best(double[] x, double[] m, double span)
    {
        double least = Math.Log(span / 100), step = Math.Log(100 * 50) / Steps;
        var best = 0;
        var squares = double.PositiveInfinity;
        for (var i = 0; i <= Steps; i++)
        {
            var here = Line(x, m, Math.Exp(least + i * step)).Squares;
            if (here < squares)
            {
                (best, squares) = (i, here);
            }
        }

        return Math.Exp(Golden(x, m, least + (best - 1) * step, least + (best + 1) * step));
    }

    private static double Golden(double[] x, double[] m, double from, double to)
    {
        const double golden = 0.6180339887498949;
        double left = to - golden * (to - from), right = from + golden * (to - from);
        double atLeft = Squares(left), atRight = Squares(right);
        while (to - from > 1e-9)
        {
            if (atLeft < atRight)
            {
                (to, right, atRight) = (right, left, atLeft);
                left = to - golden * (to - from);
                atLeft = Squares(left);
            }
            else
            {
                (from, left, atLeft) = (left, right, atRight);
                right = from + golden * (to - from);
                atRight = Squares(right);
            }
        }

        return (from + to) / 2;

        double Squares(double logTau) => Line(x, m, Math.Exp(logTau)).Squares;
    }

    /// <summary>
    /// Where the squares first pass what is allowed, going from τ towards the far end; null if they never do.
    /// </summary>
    private static double? End(double[] x, double[] m, double tau, double far, double allowed)
    {
        double inside = Math.Log(tau), outside = inside, step = (Math.Log(far) - inside) / 200;
        for (var i = 0; i < 200; i++)
        {
            outside += step;
            if (Line(x, m, Math.Exp(outside)).Squares > allowed)
            {
                break;
            }

            inside = outside;
        }

        if (inside == outside)
        {
            return null;
        }

        for (var i = 0; i < 60; i++)
        {
            var middle = (inside + outside) / 2;
            (inside, outside) = Line(x, m, Math.Exp(middle)).Squares > allowed ? (inside, middle) : (middle, outside);
        }

        return Math.Exp(inside);
    }

    /// <summary>m_∞, Δ (at the first weighing) and the squares left for one τ.</summary>
    private static (double Dry, double Loss, double Squares) Line(double[] x, double[] m, double tau)
    {
        double meanE = 0, meanM = 0;
        for (var i = 0; i < x.Length; i++)
        {
            meanE += Math.Exp((x[0] - x[i]) / tau);
            meanM += m[i];
        }

        meanE /= x.Length;
        meanM /= x.Length;
        double spread = 0, together = 0;
        for (var i = 0; i < x.Length; i++)
        {
            var e = Math.Exp((x[0] - x[i]) / tau) - meanE;
            spread += e * e;
            together += e * (m[i] - meanM);
        }

        var loss = together / spread;
        var squares = 0d;
        for (var i = 0; i < x.Length; i++)
        {
            var off = m[i] - meanM - loss * (Math.Exp((x[0] - x[i]) / tau) - meanE);
            squares += off * off;
        }

        return (meanM - loss * meanE, loss, squares);
    }
}
