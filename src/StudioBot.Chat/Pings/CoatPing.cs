using StudioBot.Craft.Reminders;
using StudioBot.Records.Pieces;

namespace StudioBot.Chat.Pings;

/// <summary>A ping about a coat: it stands while that coat is the piece's last and has not failed.</summary>
internal abstract class CoatPing : Ping
{
    /// <summary>When it is to come, by the air known now; none where it is not wanted.</summary>
    protected abstract DateTimeOffset? MomentOf(LaidCoat coat, PingTurn turn);

    /// <summary>What holds for this coat while it stands.</summary>
    protected virtual SubjectState Standing(LaidCoat coat, DateTimeOffset due) => new SubjectState.Standing(due);

    /// <inheritdoc/>
    internal override IEnumerable<Wanted> Wants(int piece, PingTurn turn)
    {
        if (turn.CoatOf(piece) is { } coat && MomentOf(coat, turn) is { } at)
        {
            yield return new Wanted(PingSubjects.Coat(coat.Act, piece), at);
        }
    }

    /// <inheritdoc/>
    internal override SubjectState StateOf(PlannedPing planned, PingTurn turn)
    {
        var (act, number) = PingSubjects.CoatOf(planned.Subject);
        return turn.Piece(number) switch
        {
            null => new SubjectState.Over(WhyUnwanted.Undone),
            { Stage: Stage.Sold } => new SubjectState.Over(WhyUnwanted.Sold),
            { Stage: Stage.Bin } => new SubjectState.Over(WhyUnwanted.Binned),
            _ when turn.CoatOf(number) is not { } coat => new SubjectState.Over(WhyUnwanted.Failed),
            _ when turn.CoatOf(number) is { } coat && coat.Act != act => new SubjectState.Over(WhyUnwanted.Coated),
            _ => turn.CoatOf(number) is { } coat && MomentOf(coat, turn) is { } due
                ? Standing(coat, due)
                : new SubjectState.Over(WhyUnwanted.Settled),
        };
    }

    /// <inheritdoc/>
    internal override string SessionOf(PlannedPing planned, PingTurn turn) =>
        turn.CoatOf(PingSubjects.CoatOf(planned.Subject).Piece)?.At.ToString("O") ?? "";
}
