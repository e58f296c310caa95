using System.Globalization;
using StudioBot.Chat.Replies;
using StudioBot.Craft.Reminders;
using StudioBot.Records.Pieces;

namespace StudioBot.Chat.Pings;

/// <summary>The estimate slides past a promised day, or the last days to act have come.</summary>
internal sealed class DueDangerPing : Ping
{
    // Below these odds a promise is in danger (common practice).
    private const double Safe = 0.80;

    // So long before the last moment to coat it is said whatever the odds.
    private static readonly TimeSpan Ahead = TimeSpan.FromDays(2);

    /// <inheritdoc/>
    public override PingSheet Sheet { get; } = new(
        PingKind.DueDanger, "due", "When a promise slips, and two days before the last day to coat.");

    /// <inheritdoc/>
    internal override IEnumerable<Wanted> Wants(int piece, PingTurn turn)
    {
        if (PromiseOf(piece, turn) is not { } promise || !IsOpen(piece, turn) || promise.Until < turn.Now)
        {
            yield break;
        }

        var at = IsInDanger(piece, promise, turn) ? turn.Now : turn.MorningFrom(LastOf(promise, turn) - Ahead);
        yield return new Wanted(PingSubjects.Piece(piece), at, SincePromised(piece, turn));
    }

    /// <inheritdoc/>
    internal override SubjectState StateOf(PlannedPing planned, PingTurn turn)
    {
        var number = (int)planned.Subject.Id;
        return IsOpen(number, turn)
            && PromiseOf(number, turn) is { } promise
            && (IsInDanger(number, promise, turn)
                || (turn.Piece(number) is not { Stage: Stage.Coated } && turn.Now >= LastOf(promise, turn) - Ahead))
                    ? new SubjectState.Standing(planned.At)
                    : new SubjectState.Over(WhyUnwanted.Settled);
    }

    /// <inheritdoc/>
    internal override string SessionOf(PlannedPing planned, PingTurn turn) =>
        planned.Subject.Id.ToString(CultureInfo.InvariantCulture);

    /// <inheritdoc/>
    internal override string Say(PingLine line, PingTurn turn)
    {
        var piece = Pieces.Of(line, turn)[0];
        var promise = PromiseOf(piece, turn)!;
        var due = $"Promise in danger: {piece} is due {turn.Day(promise.Until)}";
        var last = LastOf(promise, turn);
        var odds = OddsOf(piece, promise, turn);
        return odds >= Safe
            ? $"Promised: {piece} is due {turn.Day(promise.Until)} and has no coat yet. Coat it by {turn.Moment(last)}."
            : turn.CoatOf(piece)?.FullCure is { } cured ? $"{due} and cured by {turn.Day(cured)}: agree another day."
            : last <= turn.Now ? $"{due} and can't be cured by then: agree another day."
            : turn.Piece(piece) is { Stage: Stage.Ready } ? $"{due} and has no coat: coat it by {turn.Moment(last)}."
            : $"{due}; the odds that it is cured by then are {Show.Share(odds ?? 0)}. "
                + $"Coat it by {turn.Moment(last)}, or agree another day; warmer, drier air helps.";
    }

    /// <inheritdoc/>
    internal override IEnumerable<Button> Buttons(IReadOnlyList<PingLine> lines, PingTurn turn) =>
        Pieces.Of(lines, turn).Take(3).Select(piece => new Button($"Piece {piece}", $"piece {piece}"));

    private static bool IsOpen(int piece, PingTurn turn) =>
        turn.Piece(piece) is { Stage: Stage.Drying or Stage.Ready or Stage.Coated };

    private static PieceEvent.Due? PromiseOf(int piece, PingTurn turn) => turn.Reckoning.Lines(piece)
        .Select(line => line.What).OfType<PieceEvent.Due>().LastOrDefault();

    private static DateTimeOffset? SincePromised(int piece, PingTurn turn) => turn.Reckoning.Lines(piece)
        .Where(line => line.What is PieceEvent.Due).Select(line => (DateTimeOffset?)line.At).LastOrDefault();

    // Coated, it cures too late; drying, the odds are poor that it is dry early enough for a coat to cure.
    private static bool IsInDanger(int piece, PieceEvent.Due promise, PingTurn turn) => turn.Piece(piece) switch
    {
        { Stage: Stage.Coated } => turn.CoatOf(piece)?.FullCure > promise.Until,
        { Stage: Stage.Ready } => LastOf(promise, turn) <= turn.Now,
        _ => OddsOf(piece, promise, turn) < Safe,
    };

    private static double? OddsOf(int piece, PieceEvent.Due promise, PingTurn turn)
    {
        var last = LastOf(promise, turn);
        return turn.Reckoning.Of(piece) is not { } outlook ? null
            : last <= turn.Now ? 0
            : outlook.OddsAt(last);
    }

    // The last moment at which a coat still cures in full by the promised day.
    private static DateTimeOffset LastOf(PieceEvent.Due promise, PingTurn turn) =>
        promise.Until - turn.Studio.Practice.UsualResin.FullCure.Value;
}
