using StudioBot.Craft.Drying;

namespace StudioBot.Craft.Tests.Whole.ReadyTruth;

/// <summary>A studio that follows one policy from piece to piece and learns from what it finished.</summary>
internal sealed class PolicyWalk(Policy policy)
{
    private const int LookAgain = 2;                // days after a notyet

    private static readonly int[] WeighingDays = [3, 5, 8, 12, 16, 21, 28, 36];

    private readonly List<(int On, Lesson Lesson)> _finished = [];

    /// <summary>What became of each piece.</summary>
    public IReadOnlyList<Outcome> Through(TrueStudio studio) => [.. studio.Poured.Select(Follow)];

    private Outcome Follow(TruePiece truth)
    {
        var shift = StudioShift.From([.. _finished.Where(done => done.On <= truth.Poured).Select(done => done.Lesson)]);
        var piece = truth.Known;
        ReadyPosterior? belief = null;
        bool? held = null;
        int looks = 0, day = policy.FromDay, barredTo = 0;
        for (; day < TruePiece.Longest; day++)
        {
            if (policy.Weighs && WeighingDays.Contains(day))
            {
                (piece, belief) = (piece with { Weighings = [.. piece.Weighings, truth.Weighed(day)] }, null);
            }

            if (day < barredTo)
            {
                continue;
            }

            if (policy.Odds is { } odds)
            {
                belief ??= new ReadyPosterior(piece, shift);
                if (belief.ProbabilityAt(truth.Elapsed(day)) < odds)
                {
                    continue;
                }

                held ??= truth.LiesWithin(belief, 0.10, 0.90, day);
            }

            if (!policy.Looks)
            {
                break;
            }

            looks++;
            var says = truth.Feels(day) ? MakerSays.Dry : MakerSays.NotYet;
            (piece, belief) = (piece with { Words = [.. piece.Words, new MakerWord(truth.Elapsed(day), says)] }, null);
            if (says == MakerSays.Dry)
            {
                break;
            }

            barredTo = day + LookAgain;
        }

        if (policy.Odds is not null)
        {
            _finished.Add((truth.Poured + day, new Lesson(piece)));
        }

        return new Outcome(truth.Ready, day, looks, held);
    }
}
