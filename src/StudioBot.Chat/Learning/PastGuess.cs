namespace StudioBot.Chat.Learning;

/// <summary>A past estimate against what happened, as it would have been told then.</summary>
/// <param name="What">Of what: piece 17, white.</param>
/// <param name="At">When it would have been told.</param>
/// <param name="Happened">What came.</param>
/// <param name="Own">What this studio's records up to then said.</param>
/// <param name="Usual">What common practice said.</param>
/// <param name="Low">Eight times in ten it was to be no less than this.</param>
/// <param name="High">And no more than this.</param>
internal sealed record PastGuess(
    string What, DateTimeOffset At, double Happened, double Own, double Usual, double Low, double High)
{
    /// <summary>How far off the studio's own estimate was.</summary>
    public double Off => Math.Abs(Own - Happened);

    /// <summary>How far off common practice was.</summary>
    public double UsualOff => Math.Abs(Usual - Happened);

    /// <summary>Whether it came between what was told.</summary>
    public bool IsHeld => Low <= Happened && Happened <= High;
}
