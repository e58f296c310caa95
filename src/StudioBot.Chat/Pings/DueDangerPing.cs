using StudioBot.Chat.Replies;
using StudioBot.Craft.Reminders;
using StudioBot.Records.Pieces;

namespace StudioBot.Chat.Pings;

/// <summary>The estimate slides past a promised day.</summary>
internal sealed class DueDangerPing : Ping
{
    // Below these odds a promise is in danger (common practice).
    private const double Safe = 0.80;

    /// <inheritdoc/>
    public override PingSheet Sheet { get; } = new(
        PingKind.DueDanger, "due", "When the estimate slides past a promised day.");

    /// <inheritdoc/>
    internal override IEnumerable<Wanted> Wants(int piece, PingTurn turn)
    {
        if (PromiseOf(piece, turn) is { } promise && OddsOf(piece, promise, turn) is { } odds && odds < Safe)
        {
            yield return new Wanted(PingSubjects.Piece(piece), turn.Now, SincePromised(piece, turn));
        }
    }

    /// <inheritdoc/>
    internal override SubjectState StateOf(PlannedPing planned, PingTurn turn)
    {
        var number = (int)planned.Subject.Id;
        return turn.Piece(number) is { Stage: Stage.Drying }
            && PromiseOf(number, turn) is { } promise
            && OddsOf(number, promise, turn) < Safe
                ? new SubjectState.Standing(planned.At)
                : new SubjectState.Over(WhyUnwanted.Settled);
    }

    /// <inheritdoc/>
    internal override string Say(PingLine line, PingTurn turn)
    {
        var piece = Pieces.Of(line, turn)[0];
        var promise = PromiseOf(piece, turn)!;
        return $"Promise in danger: {piece} is due {turn.Day(promise.Until)}; the odds that it is cured by then are "
            + $"{Show.Share(OddsOf(piece, promise, turn) ?? 0)}.";
    }

    /// <inheritdoc/>
    internal override IEnumerable<Block> Under(IReadOnlyList<PingLine> lines, PingTurn turn)
    {
        var piece = Pieces.Of(lines, turn)[0];
        var last = PromiseOf(piece, turn)!.Until - Cure(turn);
        yield return new Block.Line($"Coat it by {turn.Moment(last)}, or agree another day. Warmer, drier air helps.");
    }

    /// <inheritdoc/>
    internal override IEnumerable<Button> Buttons(IReadOnlyList<PingLine> lines, PingTurn turn)
    {
        yield return new Button("Record", $"piece {Pieces.Of(lines, turn)[0]}");
        yield return new Button("Air", "air");
    }

    private static PieceEvent.Due? PromiseOf(int piece, PingTurn turn) => turn.Reckoning.Lines(piece)
        .Select(line => line.What).OfType<PieceEvent.Due>().LastOrDefault();

    private static DateTimeOffset? SincePromised(int piece, PingTurn turn) => turn.Reckoning.Lines(piece)
        .Where(line => line.What is PieceEvent.Due).Select(line => (DateTimeOffset?)line.At).LastOrDefault();

    // The odds that it is dry early enough for a coat to cure in full.
    private static double? OddsOf(int piece, PieceEvent.Due promise, PingTurn turn)
    {
        var last = promise.Until - Cure(turn);
        return turn.Reckoning.Of(piece) is not { } outlook ? null
            : last <= turn.Now ? 0
            : outlook.OddsAt(last);
    }

    private static TimeSpan Cure(PingTurn turn) => turn.Studio.Practice.UsualResin.FullCure.Value;
}
