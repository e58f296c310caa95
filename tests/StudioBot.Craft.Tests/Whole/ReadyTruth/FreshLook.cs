using StudioBot.Craft.Drying;

namespace StudioBot.Craft.Tests.Whole.ReadyTruth;

/// <summary>What an untaught studio is told of a piece on one day, with what was weighed by then.</summary>
/// <param name="Ready">The true day.</param>
/// <param name="Likely">The middle, days from the pour.</param>
/// <param name="Width">From the 10 % to the 90 % day, the days gone by counted too.</param>
/// <param name="Holds">Whether that interval holds the true day.</param>
/// <param name="HoldsInWholeDays">Whether it does as printed, outward to whole days and not before today.</param>
internal sealed record FreshLook(double Ready, double Likely, double Width, bool Holds, bool HoldsInWholeDays)
{
    /// <summary>The middle's distance from the truth, days.</summary>
    public double Error => Math.Abs(Likely - Ready);

    /// <summary>On this day, weighed on these.</summary>
    public static FreshLook Of(TruePiece truth, int day, params int[] weighedOn)
    {
        var belief = new ReadyPosterior(
            truth.Known with { Weighings = [.. weighedOn.Select(truth.Weighed)] }, StudioShift.Untaught);
        var (elapsed, pace) = (truth.Elapsed(day), truth.Pace(day));
        double Left(double share) => belief.Left(share, elapsed, pace).TotalDays;
        return new FreshLook(
            truth.Ready,
            day + Left(0.50),
            ((belief.Quantile(0.90) - belief.Quantile(0.10)) / pace.Rate).TotalDays,
            truth.LiesWithin(belief, 0.10, 0.90, day),
            (Left(0.10) == 0 || day + Math.Floor(Left(0.10)) <= truth.Ready)
                && truth.Ready <= day + Math.Ceiling(Left(0.90)));
    }
}
