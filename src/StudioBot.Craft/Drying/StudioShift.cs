namespace StudioBot.Craft.Drying;

/// <summary>
/// How much slower (above zero) or faster a studio's pieces dry than common practice has it, in logs of the time.
/// </summary>
/// <param name="Mean">b: 0.1 is about 10 % slower.</param>
/// <param name="Deviation">s_b: how uncertain that is.</param>
/// <param name="Pieces">How many finished pieces taught it.</param>
public sealed record StudioShift(double Mean, double Deviation, int Pieces)
{
    private const int Remembered = 50;
    private const double PriorDeviation = 0.35;     // common practice

    /// <summary>A studio that has not finished a piece yet.</summary>
    public static StudioShift Untaught { get; } = new(0, PriorDeviation, 0);

    /// <summary>What the finished pieces teach, oldest first; the last 50 count.</summary>
    /// <remarks>ln p(b) = −½(b/0.35)² + Σ over pieces of ln p(evidence | b), on 49 points from −1.2 to 1.2.</remarks>
    public static StudioShift From(IReadOnlyList<Lesson> lessons)
    {
        var used = Math.Min(Remembered, lessons.Count);
        if (used == 0)
        {
            return Untaught;
        }

        Span<double> logs = stackalloc double[Lesson.Nodes];
        for (var k = 0; k < logs.Length; k++)
        {
            var b = Lesson.ShiftAt(k) / PriorDeviation;
            logs[k] = -b * b / 2;
        }

        for (var i = lessons.Count - used; i < lessons.Count; i++)
        {
            lessons[i].AddTo(logs);
        }

        LogWeights.Normalise(logs);
        double mean = 0, square = 0;
        for (var k = 0; k < logs.Length; k++)
        {
            mean += logs[k] * Lesson.ShiftAt(k);
            square += logs[k] * Lesson.ShiftAt(k) * Lesson.ShiftAt(k);
        }

        return new StudioShift(mean, Math.Sqrt(Math.Max(0, square - mean * mean)), used);
    }
}
