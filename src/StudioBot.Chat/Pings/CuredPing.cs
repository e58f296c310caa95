using StudioBot.Chat.Replies;
using StudioBot.Craft.Reminders;
using StudioBot.Records;
using StudioBot.Records.Acts;
using StudioBot.Records.Pieces;

namespace StudioBot.Chat.Pings;

/// <summary>A coated piece is done.</summary>
internal sealed class CuredPing : CoatPing
{
    /// <inheritdoc/>
    public override PingSheet Sheet { get; } = new(PingKind.Cured, "cured", "When the resin is fully cured.");

    /// <inheritdoc/>
    protected override DateTimeOffset? MomentOf(LaidCoat coat, PingTurn turn) =>
        coat.FullCure is { } cured ? turn.MorningFrom(cured) : null;

    /// <inheritdoc/>
    internal override void Come(PlannedPing planned, StudioSession session, PingTurn turn)
    {
        var piece = PingSubjects.CoatOf(planned.Subject).Piece;
        var act = session.Acts.Begin(new NewAct("cured", null, $"cured {piece}", turn.Now));
        session.Pieces.Book(piece, new PieceEvent.Cured(), act);
    }

    /// <inheritdoc/>
    internal override string Say(PingLine line, PingTurn turn) => $"Fully cured: {Pieces.Named(line, turn)}.";

    /// <inheritdoc/>
    internal override IEnumerable<Block> Under(IReadOnlyList<PingLine> lines, PingTurn turn) =>
        [new Block.Line("Next: a label, a photo, and where it goes.")];

    /// <inheritdoc/>
    internal override IEnumerable<Button> Buttons(IReadOnlyList<PingLine> lines, PingTurn turn)
    {
        var pieces = Pieces.Of(lines, turn);
        yield return new Button("Kept", $"kept {Pieces.Typed(pieces)}");
        yield return new Button("Record", $"piece {pieces[0]}");
    }
}
