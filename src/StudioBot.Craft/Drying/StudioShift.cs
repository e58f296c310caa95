namespace StudioBot.Craft.Drying;

/// <summary>
/// How much slower (above zero) or faster pieces like this one dry here than common practice has it, in logs of the
/// time.
/// </summary>
/// <param name="Mean">b: 0.1 is about 10 % slower.</param>
/// <param name="Deviation">s_b: how uncertain that is.</param>
/// <param name="Pieces">How many finished pieces taught it.</param>
public sealed record StudioShift(double Mean, double Deviation, int Pieces)
{
    /// <summary>How far studios lie off common practice (common practice itself).</summary>
    internal const double UsualDeviation = 0.35;

    /// <summary>A studio that has not finished a piece yet.</summary>
    public static StudioShift Untaught { get; } = new(0, UsualDeviation, 0);
}
