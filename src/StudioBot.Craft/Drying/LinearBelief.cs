namespace StudioBot.Craft.Drying;

/// <summary>A normal belief about a few coefficients at once: their means and how they vary together.</summary>
/// <remarks>Conditioning on a normal observation of a weighted sum, one rank at a time: Bishop, Pattern Recognition and
/// Machine Learning, section 3.3 (from memory).</remarks>
internal sealed class LinearBelief
{
    private readonly double[,] _covariance;
    private readonly double[] _pull;        // sum of weights times what was observed, in units of its precision

    /// <summary>Each coefficient around zero, none tied to another.</summary>
    /// <param name="deviations">How far each may lie off, above zero.</param>
    public LinearBelief(IReadOnlyList<double> deviations)
    {
        _covariance = new double[deviations.Count, deviations.Count];
        _pull = new double[deviations.Count];
        for (var i = 0; i < deviations.Count; i++)
        {
            _covariance[i, i] = deviations[i] * deviations[i];
        }
    }

    /// <summary>The mean and variance of a weighted sum of the coefficients.</summary>
    public (double Mean, double Variance) Of(ReadOnlySpan<double> weights)
    {
        double mean = 0, variance = 0;
        for (var i = 0; i < _pull.Length; i++)
        {
            var across = Across(i, weights);
            mean += across * _pull[i];
            variance += across * weights[i];
        }

        return (mean, variance);
    }

    /// <summary>Takes a normal observation of a weighted sum in, or changes one that was taken.</summary>
    /// <param name="weights">Of which sum.</param>
    /// <param name="precision">By how much its precision (one over its variance) grows.</param>
    /// <param name="pull">By how much precision times what was observed grows.</param>
    public void Add(ReadOnlySpan<double> weights, double precision, double pull)
    {
        Span<double> across = stackalloc double[_pull.Length];
        for (var i = 0; i < across.Length; i++)
        {
            across[i] = Across(i, weights);
        }

        var variance = 0d;
        for (var i = 0; i < across.Length; i++)
        {
            variance += across[i] * weights[i];
            _pull[i] += pull * weights[i];
        }

        var gain = precision / (1 + precision * variance);
        for (var i = 0; i < across.Length; i++)
        {
            for (var j = 0; j < across.Length; j++)
            {
                _covariance[i, j] -= gain * across[i] * across[j];
            }
        }
    }

    private double Across(int row, ReadOnlySpan<double> weights)
    {
        var sum = 0d;
        for (var j = 0; j < weights.Length; j++)
        {
            sum += _covariance[row, j] * weights[j];
        }

        return sum;
    }
}
