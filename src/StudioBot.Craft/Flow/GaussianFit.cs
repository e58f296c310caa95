namespace StudioBot.Craft.Flow;

/// <summary>Several unknowns, believed beforehand and read off noisy sums of them: the normal posterior.</summary>
/// <remarks>One reading after another: gain k = Cx/(xᵀCx + σ²), mean + k·(y − xᵀm), C − k·xᵀC (textbooks of linear
/// regression, from memory).</remarks>
internal sealed class GaussianFit
{
    private readonly double[] _mean;
    private readonly double[,] _covariance;

    /// <summary>What the readings leave to believe.</summary>
    /// <param name="mean">What is believed of each unknown without them.</param>
    /// <param name="deviation">How firmly, as standard deviations; none tied to another.</param>
    /// <param name="readings">What multiplies each unknown, what was read, and its noise as a standard deviation.
    /// </param>
    public GaussianFit(
        double[] mean, double[] deviation, IEnumerable<(double[] Row, double Read, double Noise)> readings)
    {
        _mean = mean;
        _covariance = new double[mean.Length, mean.Length];
        for (var i = 0; i < mean.Length; i++)
        {
            _covariance[i, i] = deviation[i] * deviation[i];
        }

        foreach (var (row, read, noise) in readings)
        {
            Take(row, read, noise);
        }
    }

    /// <summary>How far the readings lie from what was expected of each, in squared standard deviations: about one a
    /// reading where the beliefs are right.</summary>
    public double Strain { get; private set; }

    /// <summary>The mean of such a sum of the unknowns.</summary>
    public double Mean(double[] row) => Dot(row, _mean);

    /// <summary>The variance of that.</summary>
    public double Variance(double[] row) => Math.Max(0, Dot(row, Across(row)));

    private void Take(double[] row, double read, double noise)
    {
        var across = Across(row);
        var variance = Dot(row, across) + noise * noise;
        var off = read - Dot(row, _mean);
        Strain += off * off / variance;
        for (var i = 0; i < across.Length; i++)
        {
            _mean[i] += across[i] / variance * off;
            for (var j = 0; j < across.Length; j++)
            {
                _covariance[i, j] -= across[i] * across[j] / variance;
            }
        }
    }

    private double[] Across(double[] row)
    {
        var across = new double[row.Length];
        for (var j = 0; j < row.Length; j++)
        {
            for (var i = 0; row[j] != 0 && i < row.Length; i++)
            {
                across[i] += _covariance[i, j] * row[j];
            }
        }

        return across;
    }

    private static double Dot(double[] one, double[] other)
    {
        var sum = 0d;
        for (var i = 0; i < one.Length; i++)
        {
            sum += one[i] * other[i];
        }

        return sum;
    }
}
