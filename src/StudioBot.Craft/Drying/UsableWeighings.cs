namespace StudioBot.Craft.Drying;

/// <summary>Which of a piece's weighings the ready day may rest on.</summary>
/// <param name="Used">Taken after the skin closed and not risen, by time.</param>
/// <param name="Noted">How many others there are.</param>
/// <param name="LastRose">The last weighing was heavier than the one before, beyond the scale's doubt.</param>
/// <param name="Use">Whether they are used.</param>
internal sealed record UsableWeighings(IReadOnlyList<Weighing> Used, int Noted, bool LastRose, WeighingsUse Use)
{
    // Days for 2.5 mm until the skin has closed: touch-dry, 36 h.
    private const double SkinDays = 1.5;

    // 2·√2·σ: the difference of two weighings has a deviation of √2·σ.
    private const double RiseInDeviations = 2.83;

    // Less water than this many deviations, and the weighings say nothing about the end.
    private const double LeastWater = 20;

    public bool AreUsed => Use == WeighingsUse.Used;

    public static UsableWeighings Of(DryingPiece piece)
    {
        var rise = RiseInDeviations * piece.Deviation.Grams;
        var skin = TimeSpan.FromDays(SkinDays) * (piece.Film / ScaledTime.ReadyForResin.Film);
        List<Weighing> kept = [];
        var rose = false;
        foreach (var weighing in piece.Weighings.OrderBy(weighing => weighing.Elapsed))
        {
            rose = kept.Count > 0 && weighing.Mass.Grams - kept[^1].Mass.Grams > rise;
            if (!rose)
            {
                kept.Add(weighing);
            }
        }

        kept.RemoveAll(weighing => weighing.Elapsed < skin);
        var use = piece.Weighings.Count == 0 ? WeighingsUse.None
            : piece.Water.Grams < LeastWater * piece.Deviation.Grams ? WeighingsUse.ScaleTooRough
            : kept.Count < 2 ? WeighingsUse.TooFew
            : WeighingsUse.Used;
        var used = use == WeighingsUse.Used ? kept.Count : 0;
        return new UsableWeighings(kept, piece.Weighings.Count - used, rose, use);
    }
}
