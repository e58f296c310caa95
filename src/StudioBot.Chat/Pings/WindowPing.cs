using StudioBot.Chat.Asking;
using StudioBot.Chat.Coats;
using StudioBot.Chat.Replies;
using StudioBot.Craft.Reminders;
using StudioBot.Records.Pieces;

namespace StudioBot.Chat.Pings;

/// <summary>A ping about the recoat window of a coat.</summary>
internal abstract class WindowPing : CoatPing
{
    /// <inheritdoc/>
    protected sealed override DateTimeOffset? MomentOf(LaidCoat coat, PingTurn turn)
    {
        if (coat.Window is not { } window || turn.AddresseeOf(coat.Piece) is not { } maker)
        {
            return null;
        }

        var wakes = turn.Studio.View.Wishes.Of(maker.Id).Woken;
        var moments = WindowPings.Plan(window, turn.QuietOf(maker.Id), coat.At, wakes);
        return moments.FirstOrDefault(moment => moment.Kind == Sheet.Kind)?.At;
    }

    /// <inheritdoc/>
    protected sealed override SubjectState Standing(LaidCoat coat, DateTimeOffset due) =>
        new SubjectState.Window(due, coat.Window!.ClosesFrom);

    /// <summary>From Thu 26 Nov 14:10 to Fri 27 Nov 02:10.</summary>
    protected static string FromTo(PingLine line, PingTurn turn)
    {
        var number = Pieces.Of(line, turn)[0];
        return turn.CoatOf(number)?.Window is { } window
            ? $"from {turn.Moment(window.OpensBy)} to {turn.Moment(window.ClosesFrom)}"
            : "";
    }

    /// <inheritdoc/>
    internal override string SayLate(PingLine line, WhatHolds now, PingTurn turn) => now switch
    {
        WhatHolds.OpenUntil open =>
            $"Recoat window of {Pieces.Named(line, turn)}: open still, until {turn.Moment(open.Closes)}.",
        WhatHolds.Closed closed => $"Recoat window of {Pieces.Named(line, turn)} closed {turn.Moment(closed.At)}: "
            + "let it cure in full, wash it, sand it dull, wipe, then coat.",
        _ => Say(line, turn),
    };

    /// <inheritdoc/>
    internal override IEnumerable<Block> Under(IReadOnlyList<PingLine> lines, PingTurn turn)
    {
        var pieces = Pieces.Of(lines, turn);
        var known = pieces.Select(turn.Piece).OfType<Piece>().ToList();
        var (system, resin, _) = ResinJob.Resins(null, turn.Studio);
        var need = ResinNeed.For(ResinNeed.Of(known), "", system.FloodFilm.Value.Usual, 1, resin, system).Total;
        yield return new Block.Line(
            $"A second coat takes {Show.ToMeasure(need)}. A gloved finger should leave a print and draw no string.");
        var own = turn.CoatOf(pieces[0])?.Hours.Pace is { Reports: > 0 } pace ? CoatHours.Grounds(pace) : "";
        yield return new Block.Line($"By the room's temperature; the product's sheet comes first.{own}");
    }

    /// <inheritdoc/>
    internal override IEnumerable<Button> Buttons(IReadOnlyList<PingLine> lines, PingTurn turn)
    {
        var typed = Pieces.Typed(Pieces.Of(lines, turn));
        if (Pieces.Of(lines, turn).Count <= Pieces.MostForResin)
        {
            yield return new Button("Amounts", $"resin {typed}");
        }

        yield return new Button("Record", $"piece {Pieces.Of(lines, turn)[0]}");
    }
}
