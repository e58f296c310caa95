using StudioBot.Craft.Units;

namespace StudioBot.Craft.Drying;

/// <summary>
/// What one finished piece says about how slowly pieces like it dry here. Worked out once a piece: the prior is left
/// out of it, or it would count twice.
/// </summary>
public sealed class Lesson
{
    // How many shifts are weighed against each other: −1.6 to 1.6 in steps of 0.05.
    private const int Nodes = 65;
    private const double Widest = 1.6;
    private const double Step = 2 * Widest / (Nodes - 1);
    private const double Variance = ReadyPrior.PieceDeviation * ReadyPrior.PieceDeviation;
    private static readonly double Bend = Math.Exp(-Step * Step / Variance);

    private readonly double[] _weights = new double[Nodes];     // the likelihood of each shift, 1 at most

    /// <summary>The lesson of this piece's words and weighings.</summary>
    public Lesson(DryingPiece piece)
    {
        Film = piece.Film;
        Room = piece.Room;
        Span<double> evidence = stackalloc double[ReadyGrid.Nodes];
        Evidence.AddTo(evidence, piece);
        LogWeights.Normalise(evidence);

        var centre = ReadyPrior.Centre(piece.Film, piece.Ground);
        for (var i = 0; i < evidence.Length; i++)
        {
            Spread(evidence[i], ReadyGrid.LogDays(i) - centre);
        }

        for (var k = 0; k < Nodes; k++)
        {
            _weights[k] = Math.Max(_weights[k], double.Epsilon);
        }
    }

    /// <summary>How thick it was laid.</summary>
    internal Length Film { get; }

    /// <summary>The room it dried in; none where that is not known.</summary>
    internal string? Room { get; }

    /// <summary>What is believed of this piece's shift once this lesson meets a normal belief.</summary>
    /// <param name="mean">What was believed without it.</param>
    /// <param name="variance">How uncertain that was, above zero.</param>
    /// <returns>The mean and variance with it, and how well it fits, 0 to 1: the mean likelihood under the belief, 1
    /// for a piece that dried just then.</returns>
    internal (double Mean, double Variance, double Fit) Meet(double mean, double variance)
    {
        Span<double> bells = stackalloc double[Nodes];
        var middle = Math.Clamp((int)Math.Round((mean + Widest) / Step), 0, Nodes - 1);
        Slope(bells, middle, 1, mean, variance);
        Slope(bells, middle, -1, mean, variance);
        double all = 0, weighed = 0, first = 0, second = 0;
        for (var k = 0; k < Nodes; k++)
        {
            var weight = bells[k] * _weights[k];
            all += bells[k];
            weighed += weight;
            first += weight * ShiftAt(k);
            second += weight * ShiftAt(k) * ShiftAt(k);
        }

        var met = first / weighed;
        return (met, Math.Max(1e-9, second / weighed - met * met), weighed / all);
    }

    private static double ShiftAt(int node) => -Widest + Step * node;

    // A bell from its top outwards, by its height over that of the top node: from node to node it changes by a factor
    // that itself changes by a fixed one.
    private static void Slope(Span<double> bells, int from, int step, double mean, double variance)
    {
        var bend = Math.Exp(-Step * Step / variance);
        var change = Math.Exp(-step * Step * (ShiftAt(from) - mean) / variance - Step * Step / (2 * variance));
        var bell = 1d;
        for (var k = from; k is >= 0 and < Nodes; k += step)
        {
            bells[k] = bell;
            bell *= change;
            change *= bend;
        }
    }

    /// <summary>Adds one node's weight under each shift's bell.</summary>
    private void Spread(double weight, double off)
    {
        // From shift to shift a bell changes by a factor that itself changes by a fixed one: two exponentials for all.
        var bell = weight * Math.Exp(-(off + Widest) * (off + Widest) / (2 * Variance));
        var change = Math.Exp(((off + Widest) * Step - Step * Step / 2) / Variance);
        for (var k = 0; k < Nodes; k++)
        {
            _weights[k] += bell;
            bell *= change;
            change *= Bend;
        }
    }
}
