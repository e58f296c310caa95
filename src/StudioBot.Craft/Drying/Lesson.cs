namespace StudioBot.Craft.Drying;

/// <summary>
/// What one finished piece says about the studio's shift. Worked out once a piece: the prior is left out of it, or it would
/// count twice.
/// </summary>
public sealed class Lesson
{
    /// <summary>How many shifts are weighed against each other: −1.2 to 1.2 in steps of 0.05.</summary>
    internal const int Nodes = 49;

    private readonly double[] _logs = new double[Nodes];

    /// <summary>The lesson of this piece's words and weighings.</summary>
    public Lesson(DryingPiece piece)
    {
        Span<double> evidence = stackalloc double[ReadyGrid.Nodes];
        Evidence.AddTo(evidence, piece);
        LogWeights.Normalise(evidence);

        var centre = ReadyPrior.Centre(piece.Film, piece.Ground);
        for (var k = 0; k < Nodes; k++)
        {
            var sum = 0d;
            for (var i = 0; i < evidence.Length; i++)
            {
                var off = (ReadyGrid.LogDays(i) - centre - ShiftAt(k)) / ReadyPrior.PieceDeviation;
                sum += evidence[i] * Math.Exp(-off * off / 2);
            }

            _logs[k] = Math.Log(Math.Max(sum, double.Epsilon));
        }
    }

    /// <summary>The shift at one node.</summary>
    internal static double ShiftAt(int node) => -1.2 + 0.05 * node;

    /// <summary>Adds this piece's log likelihood of each shift.</summary>
    internal void AddTo(Span<double> logs)
    {
        for (var k = 0; k < Nodes; k++)
        {
            logs[k] += _logs[k];
        }
    }
}
