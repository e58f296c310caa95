namespace StudioBot.Craft.Drying;

/// <summary>How well each ready day explains a piece's weighings.</summary>
/// <remarks>
/// For each X and z: τ = (X/2.5)·exp(z/2), still to go ρ = 0.02·W·exp((X − x)/τ), variance σ² + (0.2·ρ)²; the dry
/// mass is
/// integrated out in closed form. Two hundredths and not one: at the line as much slow solvent is to go as water.
/// </remarks>
internal static class WeighingLikelihood
{
    private const double ModelError = 0.2;
    private const double SpanInTaus = 2.5;
    private const double SteepestLog = 12;

    private static readonly double[] Z = [-1.5, -1, -0.5, 0, 0.5, 1, 1.5];
    private static readonly double[] LogWeightOfZ = [.. Z.Select(z => -z * z / 2)];
    private static readonly double[] TausPerDay = [.. Z.Select(z => Math.Exp(z / 2) / SpanInTaus)];

    /// <summary>Adds the log likelihood of each node.</summary>
    public static void AddTo(Span<double> logs, IReadOnlyList<Weighing> used, DryingPiece piece)
    {
        Span<double> days = used.Count <= 64 ? stackalloc double[used.Count] : new double[used.Count];
        Span<double> grams = used.Count <= 64 ? stackalloc double[used.Count] : new double[used.Count];
        for (var i = 0; i < used.Count; i++)
        {
            days[i] = used[i].Elapsed.TotalDays;
            grams[i] = used[i].Mass.Grams;
        }

        Span<double> ofZ = stackalloc double[Z.Length];
        var variance = piece.Deviation.Grams * piece.Deviation.Grams;
        for (var node = 0; node < logs.Length; node++)
        {
            var ready = ReadyGrid.Days(node);
            for (var k = 0; k < ofZ.Length; k++)
            {
                ofZ[k] = LogWeightOfZ[k]
                    + LogLikelihood(ready, ready * TausPerDay[k], days, grams, variance, piece);
            }

            logs[node] += LogSum(ofZ);
        }
    }

    private static double LogLikelihood(
        double ready,
        double tau,
        ReadOnlySpan<double> days,
        ReadOnlySpan<double> grams,
        double variance,
        DryingPiece piece)
    {
        // One pass: weighted sums of y = m − ρ about the first y, so that no digits are lost to the panel's mass.
        // Variances are multiplied and their logarithm taken once: it costs as much as all the rest of the loop.
        double sumLog = 0, product = 1, weights = 0, first = 0, second = 0, origin = grams[^1];
        var atLine = ReadyLine.Seen(piece.Water).Grams;
        for (var i = 0; i < days.Length; i++)
        {
            var toGo = atLine * Math.Exp(Math.Min((ready - days[i]) / tau, SteepestLog));
            var v = variance + ModelError * ModelError * toGo * toGo;
            var y = grams[i] - origin - toGo;
            var weight = 1 / v;
            product *= v;
            weights += weight;
            first += y * weight;
            second += y * y * weight;
            if (product is > 1e200 or < 1e-200)
            {
                sumLog += Math.Log(product);
                product = 1;
            }
        }

        if (piece.Dry is { } dry)
        {
            // A dry mass worked out from the bare panel is never surer than one weighing.
            var v = Math.Max(variance, dry.Deviation.Grams * dry.Deviation.Grams);
            var y = dry.Expected.Grams - origin;
            weights += 1 / v;
            first += y / v;
            second += y * y / v;
        }

        return -(sumLog + second - first * first / weights + Math.Log(product * weights)) / 2;
    }

    private static double LogSum(ReadOnlySpan<double> logs)
    {
        var most = logs[0];
        foreach (var log in logs)
        {
            most = Math.Max(most, log);
        }

        var sum = 0d;
        foreach (var log in logs)
        {
            sum += Math.Exp(log - most);
        }

        return most + Math.Log(sum);
    }
}
