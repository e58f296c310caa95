namespace StudioBot.Craft.Drying;

/// <summary>When a piece will be ready for resin, counted from now on the wall.</summary>
/// <param name="Earliest">One time in ten it is ready by then; never below zero.</param>
/// <param name="Likely">The middle.</param>
/// <param name="Latest">Nine times in ten it is ready by then.</param>
/// <param name="Probability">How likely it is ready now, 0 to 1. Only the maker's word makes it ready.</param>
/// <param name="Grounds">What it rests on.</param>
public sealed record ReadyEstimate(
    TimeSpan Earliest, TimeSpan Likely, TimeSpan Latest, double Probability, ReadyGrounds Grounds)
{
    /// <summary>From here on it is worth a hand or a scale (common practice).</summary>
    public const double CheckFrom = 0.70;

    /// <summary>From here on it is likely ready (common practice).</summary>
    public const double LikelyFrom = 0.90;

    /// <summary>By when so large a share of pieces like this one are dry, in equivalent time from the pour, as told
    /// when it is poured: without its maker's words and weighings.</summary>
    /// <param name="piece">Its film and ground count.</param>
    /// <param name="shift">What the studio's own pieces had taught by then.</param>
    /// <param name="share">0 to 1, both excluded.</param>
    public static TimeSpan AsPoured(DryingPiece piece, StudioShift shift, double share) =>
        TimeSpan.FromDays(Math.Exp(ReadyPrior.Quantile(piece, shift, share)));

    /// <summary>What the odds call for now.</summary>
    public ReadyAdvice Advice =>
        Probability >= LikelyFrom ? ReadyAdvice.LikelyReady
        : Probability >= CheckFrom ? ReadyAdvice.CheckByHand
        : ReadyAdvice.Wait;

    /// <summary>The first day of the interval, rounded down to a whole day and never before today.</summary>
    public DateOnly EarliestDay(DateOnly today) => today.AddDays((int)Math.Floor(Earliest.TotalDays));

    /// <summary>The likely day.</summary>
    public DateOnly LikelyDay(DateOnly today) =>
        today.AddDays((int)Math.Round(Likely.TotalDays, MidpointRounding.AwayFromZero));

    /// <summary>The last day of the interval, rounded up to a whole day.</summary>
    public DateOnly LatestDay(DateOnly today) => today.AddDays((int)Math.Ceiling(Latest.TotalDays));
}
