namespace StudioBot.Craft.Drying;

/// <summary>What is believed of the drying time a piece takes, pour to ready line, in equivalent days.</summary>
public sealed class ReadyPosterior
{
    private readonly double[] _weights = new double[ReadyGrid.Nodes];

    /// <summary>Prior, maker's words and weighings together.</summary>
    public ReadyPosterior(DryingPiece piece, StudioShift shift)
    {
        ReadyPrior.AddTo(_weights, piece, shift);
        Evidence.AddTo(_weights, piece);
        LogWeights.Normalise(_weights);
    }

    /// <summary>The drying time (equivalent) below which this share of the belief lies.</summary>
    /// <param name="share">0 to 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">The share is outside 0 to 1.</exception>
    public TimeSpan Quantile(double share) => share is >= 0 and <= 1
        ? TimeSpan.FromDays(Math.Exp(ReadyGrid.Quantile(_weights, share)))
        : throw new ArgumentOutOfRangeException(nameof(share), share, "A share is 0 to 1.");

    /// <summary>How likely the piece is ready after this much drying time (equivalent), 0 to 1.</summary>
    public double ProbabilityAt(TimeSpan elapsed) =>
        elapsed <= TimeSpan.Zero ? 0 : ReadyGrid.Below(_weights, Math.Log(elapsed.TotalDays));

    /// <summary>How long from now, on the wall, until this share is reached; nothing when it already is.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The pace stands still.</exception>
    public TimeSpan Left(double share, TimeSpan elapsed, RoomPace pace)
    {
        if (pace.Rate <= 0)
        {
            throw new ArgumentOutOfRangeException(nameof(pace), "Nothing gets ready in a room that stands still.");
        }

        var left = Quantile(share) - elapsed;
        return left > TimeSpan.Zero ? left / pace.Rate : TimeSpan.Zero;
    }
}
