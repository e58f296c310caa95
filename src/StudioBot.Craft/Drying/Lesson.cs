namespace StudioBot.Craft.Drying;

/// <summary>
/// What one finished piece says about the studio's shift. Worked out once a piece: the prior is left out of it, or it
/// would
/// count twice.
/// </summary>
public sealed class Lesson
{
    /// <summary>How many shifts are weighed against each other: −1.2 to 1.2 in steps of 0.05.</summary>
    internal const int Nodes = 49;

    private const double Widest = 1.2;
    private const double Step = 2 * Widest / (Nodes - 1);
    private const double Variance = ReadyPrior.PieceDeviation * ReadyPrior.PieceDeviation;
    private static readonly double Bend = Math.Exp(-Step * Step / Variance);

    private readonly double[] _logs = new double[Nodes];

    /// <summary>The lesson of this piece's words and weighings.</summary>
    public Lesson(DryingPiece piece)
    {
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
            _logs[k] = Math.Log(Math.Max(_logs[k], double.Epsilon));
        }
    }

    /// <summary>The shift at one node.</summary>
    internal static double ShiftAt(int node) => -Widest + Step * node;

    /// <summary>Adds this piece's log likelihood of each shift.</summary>
    internal void AddTo(Span<double> logs)
    {
        for (var k = 0; k < Nodes; k++)
        {
            logs[k] += _logs[k];
        }
    }

    /// <summary>Adds one node's weight under each shift's bell.</summary>
    private void Spread(double weight, double off)
    {
        // From shift to shift a bell changes by a factor that itself changes by a fixed one: two exponentials for 49.
        var bell = weight * Math.Exp(-(off + Widest) * (off + Widest) / (2 * Variance));
        var change = Math.Exp(((off + Widest) * Step - Step * Step / 2) / Variance);
        for (var k = 0; k < Nodes; k++)
        {
            _logs[k] += bell;
            bell *= change;
            change *= Bend;
        }
    }
}
