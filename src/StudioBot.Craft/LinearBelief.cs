namespace StudioBot.Craft;

/// <summary>A normal belief about several coefficients at once: their means and how they vary together.</summary>
/// <remarks>Conditioning on a normal observation of a weighted sum, one rank at a time: Bishop, Pattern Recognition and
/// Machine Learning, section 3.3 (from memory).</remarks>
internal sealed class LinearBelief
{
    private readonly double[,] _covariance;
    private readonly double[] _pull;        // sum of weights times what was observed, in units of its precision

    /// <summary>What is believed beforehand, no coefficient tied to another.</summary>
    /// <param name="means">Where each is expected.</param>
    /// <param name="deviations">How far each may lie off, above zero.</param>
    public LinearBelief(IReadOnlyList<double> means, IReadOnlyList<double> deviations)
    {
        _covariance = new double[deviations.Count, deviations.Count];
        _pull = new double[deviations.Count];
        for (var i = 0; i < deviations.Count; i++)
        {
            _covariance[i, i] = deviations[i] * deviations[i];
            _pull[i] = means[i] / _covariance[i, i];
        }
    }

    /// <summary>The mean and variance of a weighted sum of the coefficients.</summary>
    public (double Mean, double Variance) Of(ReadOnlySpan<double> weights)
    {
        Span<double> across = stackalloc double[_pull.Length];
        return Of(weights, across);
    }

    /// <summary>Takes a normal observation of a weighted sum in, or changes one that was taken.</summary>
    /// <param name="weights">Of which sum.</param>
    /// <param name="precision">By how much its precision (one over its variance) grows.</param>
    /// <param name="pull">By how much precision times what was observed grows.</param>
    public void Add(ReadOnlySpan<double> weights, double precision, double pull)
    {
        Span<double> across = stackalloc double[_pull.Length];
        var gain = precision / (1 + precision * Of(weights, across).Variance);
        for (var i = 0; i < across.Length; i++)
        {
            _pull[i] += pull * weights[i];
            for (var j = 0; j < across.Length; j++)
            {
                _covariance[i, j] -= gain * across[i] * across[j];
            }
        }
    }

    // Leaves in across how each coefficient varies with the sum.
    private (double Mean, double Variance) Of(ReadOnlySpan<double> weights, Span<double> across)
    {
        across.Clear();
        for (var j = 0; j < across.Length; j++)
        {
            // Most sums are of a few coefficients.
            for (var i = 0; weights[j] != 0 && i < across.Length; i++)
            {
                across[i] += _covariance[j, i] * weights[j];
            }
        }

        double mean = 0, variance = 0;
        for (var i = 0; i < across.Length; i++)
        {
            mean += across[i] * _pull[i];
            variance += across[i] * weights[i];
        }

        return (mean, Math.Max(0, variance));
    }
}
