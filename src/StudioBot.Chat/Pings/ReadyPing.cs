using StudioBot.Chat.Asking;
using StudioBot.Chat.Replies;
using StudioBot.Craft.Drying;
using StudioBot.Craft.Reminders;
using StudioBot.Craft.Units;
using StudioBot.Records.Pieces;

namespace StudioBot.Chat.Pings;

/// <summary>Likely ready to coat: at the late end of the interval, in the morning.</summary>
internal sealed class ReadyPing : DryingPing
{
    /// <inheritdoc/>
    public override PingSheet Sheet { get; } = new(
        PingKind.Ready, "ready", "When nine times of ten it would be dry by now.");

    /// <inheritdoc/>
    protected override DateTimeOffset? MomentOf(int piece, PingTurn turn) => turn.Reckoning.Of(piece) switch
    {
        { LateAt: { } late, QuietUntil: { } until } when until > late => turn.MorningFrom(until),
        { LateAt: { } late } => turn.MorningFrom(late),
        _ => null,
    };

    /// <inheritdoc/>
    internal override string Say(PingLine line, PingTurn turn) => $"Ready to coat, likely: {Pieces.Named(line, turn)}.";

    /// <inheritdoc/>
    internal override IEnumerable<Block> Under(IReadOnlyList<PingLine> lines, PingTurn turn)
    {
        var pieces = Pieces.Of(lines, turn);
        yield return new Block.Line(Grounds(pieces, turn));
        yield return new Block.Line("Check by hand first: cool is not dry, and a dent or a tacky edge means wait.");
        yield return new Block.Line(
            $"Resin for {(pieces.Count == 1 ? "it" : "them")}: {Show.ToMeasure(Resin(pieces, turn))}.");
    }

    /// <inheritdoc/>
    internal override IEnumerable<Button> Buttons(IReadOnlyList<PingLine> lines, PingTurn turn)
    {
        var pieces = Pieces.Of(lines, turn);
        if (pieces.Count > Pieces.MostTyped)
        {
            yield return new Button("Which are ready", "ready");
            yield break;
        }

        var typed = Pieces.Typed(pieces);
        var total = Show.ToMeasure(Resin(pieces, turn));
        yield return new Button("Coated", $"coat {typed} {total} {turn.Studio.Practice.UsualResin.Ratio.Value}");
        yield return new Button("Dry, not coated", $"dry {typed}");
        yield return new Button("Not yet", $"notyet {typed} 2 days");
        yield return new Button("Record", $"piece {pieces[0]}");
    }

    private static string Grounds(IReadOnlyList<int> pieces, PingTurn turn)
    {
        var grounds = pieces.Select(turn.Reckoning.Of).Select(outlook => outlook?.Outlook)
            .OfType<ReadyOutlook.Expected>().Select(expected => expected.Estimate.Grounds).ToList();
        var weighings = grounds.Sum(ground => ground.Weighings);
        var own = grounds.Count > 0 ? grounds.Max(ground => ground.OwnPieces) : 0;
        return (weighings, own) switch
        {
            ( > 0, _) => $"Rests on {weighings} weighing{(weighings == 1 ? "" : "s")} and the room's air.",
            (_, > 0) => $"Rests on the room's air and {own} finished piece{(own == 1 ? "" : "s")} of this studio.",
            _ => "Rests on common practice and the room's air; no weighings.",
        };
    }

    private static Volume Resin(IReadOnlyList<int> pieces, PingTurn turn)
    {
        var (system, resin, _) = ResinJob.Resins(null, turn.Studio);
        var known = pieces.Select(turn.Piece).OfType<Piece>().ToList();
        return ResinNeed.For(ResinNeed.Of(known), "", system.FloodFilm.Value.Usual, 1, resin, system).Total;
    }
}
