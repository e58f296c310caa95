using StudioBot.Craft.Drying;
using StudioBot.Craft.Reminders;
using StudioBot.Records.Pieces;

namespace StudioBot.Chat.Pings;

/// <summary>A ping about a piece that dries: it stands until somebody says dry, coats it, or it is gone.</summary>
internal abstract class DryingPing : Ping
{
    /// <summary>When it is to come, by what is known now; none where there is no day.</summary>
    protected abstract DateTimeOffset? MomentOf(int piece, PingTurn turn);

    /// <inheritdoc/>
    internal override IEnumerable<Wanted> Wants(int piece, PingTurn turn)
    {
        if (turn.Piece(piece) is { Stage: Stage.Drying } && MomentOf(piece, turn) is { } at)
        {
            yield return new Wanted(PingSubjects.Piece(piece), at, LastSaid(piece, turn));
        }
    }

    /// <inheritdoc/>
    internal override SubjectState StateOf(PlannedPing planned, PingTurn turn)
    {
        var number = (int)planned.Subject.Id;
        return turn.Piece(number) switch
        {
            null => new SubjectState.Over(WhyUnwanted.Undone),
            { Stage: Stage.Drying } when MomentOf(number, turn) is { } at => new SubjectState.Standing(at),
            { Stage: Stage.Drying } when IsOverdue(number, turn) => new SubjectState.Standing(planned.At),
            { Stage: Stage.Sold } => new SubjectState.Over(WhyUnwanted.Sold),
            { Stage: Stage.Bin } => new SubjectState.Over(WhyUnwanted.Binned),
            { Stage: Stage.Coated } => new SubjectState.Over(WhyUnwanted.Coated),
            _ => new SubjectState.Over(WhyUnwanted.Settled),
        };
    }

    /// <inheritdoc/>
    internal override DateTimeOffset? NotBefore(PlannedPing planned, PingTurn turn) =>
        turn.Reckoning.Of((int)planned.Subject.Id)?.QuietUntil;

    // So long past its late end that the estimate gives no day any more: it is said all the same.
    private static bool IsOverdue(int piece, PingTurn turn) =>
        turn.Reckoning.Of(piece)?.Outlook is ReadyOutlook.NoDay { Kind: NoReadyDay.Overdue };

    // A word of the maker or a weighing starts it anew: what was said before does not count.
    private static DateTimeOffset? LastSaid(int piece, PingTurn turn) => turn.Reckoning.Lines(piece)
        .Where(line => line.What is PieceEvent.NotYet or PieceEvent.Weighed or PieceEvent.Poured)
        .Select(line => (DateTimeOffset?)line.At)
        .Max();
}
