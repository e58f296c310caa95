using StudioBot.Craft.Drying;

namespace StudioBot.Craft.Tests.Whole.ReadyTruth;

/// <summary>One piece under a policy, evening by evening.</summary>
internal sealed class PieceWatch(Policy policy, TruePiece truth, StudioShift shift)
{
    private const int LookAgain = 2;                // days after a notyet

    private static readonly int[] WeighingDays = [3, 5, 8, 12, 16, 21, 28, 36];

    private ReadyPosterior? _belief;
    private int _barredTo;
    private int _weighAgainOn;

    /// <summary>What is known of it by now.</summary>
    public DryingPiece Piece { get; private set; } = truth.Known;

    /// <summary>How often a hand felt it.</summary>
    public int Looks { get; private set; }

    /// <summary>How often it was weighed again because it rose.</summary>
    public int WeighedAgain { get; private set; }

    /// <summary>Whether the 80 % interval held the truth at the first ping; null before it.</summary>
    public bool? HeldAtPing { get; private set; }

    /// <summary>Passes an evening; true when the piece is coated on it.</summary>
    public bool IsCoatedOn(int day)
    {
        if (policy.Weighs && day <= TruePiece.LastWeighed && (WeighingDays.Contains(day) || day == _weighAgainOn))
        {
            Learn(Piece with { Weighings = [.. Piece.Weighings, truth.Weighed(day)] });
        }

        return day >= _barredTo
            && (policy.Odds is not { } odds || IsLikely(odds, day))
            && (!policy.Looks || FeelsDry(day));
    }

    private bool IsLikely(double odds, int day)
    {
        _belief ??= new ReadyPosterior(Piece, shift);
        if (_belief.ProbabilityAt(truth.Elapsed(day)) < odds || IsHeldBack(day))
        {
            return false;
        }

        HeldAtPing ??= truth.LiesWithin(_belief, 0.10, 0.90, day);
        return true;
    }

    // What has no day is not pinged, unless it is overdue: that asks for a look itself.
    private bool IsHeldBack(int day)
    {
        var outlook = ReadyOutlook.Of(Piece, truth.Elapsed(day), truth.Pace(day), truth.Air(day), shift);
        if (outlook is not ReadyOutlook.NoDay { Kind: not NoReadyDay.Overdue } without)
        {
            return false;
        }

        if (without.Kind == NoReadyDay.MassRose)
        {
            (_weighAgainOn, WeighedAgain) = (day + 1, WeighedAgain + 1);
        }

        return true;
    }

    private bool FeelsDry(int day)
    {
        var says = truth.Feels(day) ? MakerSays.Dry : MakerSays.NotYet;
        Learn(Piece with { Words = [.. Piece.Words, new MakerWord(truth.Elapsed(day), says)] });
        Looks++;
        _barredTo = day + LookAgain;
        return says == MakerSays.Dry;
    }

    private void Learn(DryingPiece known) => (Piece, _belief) = (known, null);
}
