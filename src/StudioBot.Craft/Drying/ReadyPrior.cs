using StudioBot.Craft.Units;

namespace StudioBot.Craft.Drying;

/// <summary>What is believed of a piece's drying before anyone touched or weighed it.</summary>
/// <remarks>
/// ln X ~ N(ln 8 + 1.75·ln(h/2.5 mm) + ln f + b, 0.45² + s_b²), X in equivalent days, f 1.25 on raw wood or canvas
/// (common practice).
/// </remarks>
internal static class ReadyPrior
{
    /// <summary>How far pieces of one studio scatter, in logs.</summary>
    public const double PieceDeviation = 0.45;

    private const double ThirstyFactor = 1.25;

    /// <summary>μ of a studio that dries as common practice has it.</summary>
    public static double Centre(Length film, Ground ground)
    {
        var ready = ScaledTime.ReadyForResin;
        return Math.Log(ready.Time.TotalDays) + ready.Exponent * Math.Log(film / ready.Film)
            + (ground == Ground.Thirsty ? Math.Log(ThirstyFactor) : 0);
    }

    /// <summary>ln X at a share of the prior.</summary>
    public static double Quantile(DryingPiece piece, StudioShift shift, double share) =>
        Centre(piece.Film, piece.Ground) + shift.Mean + Math.Sqrt(Variance(shift)) * NormalCurve.Quantile(share);

    /// <summary>Adds the log prior of each node.</summary>
    public static void AddTo(Span<double> logs, DryingPiece piece, StudioShift shift)
    {
        double centre = Centre(piece.Film, piece.Ground) + shift.Mean, variance = Variance(shift);
        for (var i = 0; i < logs.Length; i++)
        {
            var off = ReadyGrid.LogDays(i) - centre;
            logs[i] -= off * off / (2 * variance);
        }
    }

    private static double Variance(StudioShift shift) =>
        PieceDeviation * PieceDeviation + shift.Deviation * shift.Deviation;
}
