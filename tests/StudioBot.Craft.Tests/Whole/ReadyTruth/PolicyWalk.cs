using StudioBot.Craft.Drying;

namespace StudioBot.Craft.Tests.Whole.ReadyTruth;

/// <summary>A studio that follows one policy from piece to piece and learns from what it finished.</summary>
internal sealed class PolicyWalk(Policy policy)
{
    private readonly List<(int On, Lazy<Lesson> Lesson)> _finished = [];

    /// <summary>What became of each piece.</summary>
    public IReadOnlyList<Outcome> Through(TrueStudio studio) => [.. studio.Poured.Select(Follow)];

    private Outcome Follow(TruePiece truth)
    {
        var taught = _finished.Where(done => done.On <= truth.Poured).Select(done => done.Lesson.Value);
        var watch = new PieceWatch(policy, truth, StudioDrying.From([.. taught]).For(truth.Known.Film, null));
        var day = policy.FromDay;
        while (day < TruePiece.Longest && !watch.IsCoatedOn(day))
        {
            day++;
        }

        if (policy.Odds is not null)
        {
            _finished.Add((truth.Poured + day, new Lazy<Lesson>(() => new Lesson(watch.Piece))));
        }

        return new Outcome(truth.Ready, day, watch.Looks, watch.WeighedAgain, watch.HeldAtPing);
    }
}
