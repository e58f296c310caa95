using System.Globalization;
using StudioBot.Chat.Replies;
using StudioBot.Chat.Sharing;
using StudioBot.Craft.Reminders;

namespace StudioBot.Chat.Pings;

/// <summary>The studio's week, in five lines; after an outage one for all that were missed.</summary>
internal sealed class WeekPing : Ping
{
    private const int Days = 7;

    // Its headline may wrap, where it comes late.
    private const int HeadLines = 2;

    /// <inheritdoc/>
    public override PingSheet Sheet { get; } = new(
        PingKind.Week, "week", "The studio's week, to its group or else to its stewards.");

    /// <summary>Whether nothing was booked and nothing happened to a piece: such a week is not told.</summary>
    internal static bool IsIdle(PlannedPing planned, PingTurn turn)
    {
        var span = SpanOf(planned.At, turn);
        var view = turn.Studio.View;
        return view.Stock.HoldingBetween(span.From, span.Until).Count == 0
            && view.Pieces.LinesBetween(span.From, span.Until).Count == 0;
    }

    /// <inheritdoc/>
    internal override SubjectState StateOf(PlannedPing planned, PingTurn turn) =>
        new SubjectState.Standing(planned.At);

    /// <inheritdoc/>
    internal override string Say(PingLine line, PingTurn turn)
    {
        var span = SpanOf(line.Pings[0].Planned.At, turn);
        var days = turn.Zone.DateOf(span.Until).DayNumber - turn.Zone.DateOf(span.From).DayNumber;
        var time = days == Days ? "week" : days % Days == 0 ? $"{days / Days} weeks" : $"{days} days";
        return $"The {time} to "
            + turn.Zone.LocalOf(span.Until).ToString("ddd d MMM", CultureInfo.InvariantCulture);
    }

    /// <inheritdoc/>
    internal override IEnumerable<Block> Under(IReadOnlyList<PingLine> lines, PingTurn turn) => new WeekSummary(
        SpanOf(lines[0].Pings[0].Planned.At, turn),
        turn.Studio,
        turn.Now,
        turn.Zone,
        withMoney: lines[0].Pings[0].Planned.Chat >= 0).Within(LineBudget.Lines - HeadLines);

    /// <inheritdoc/>
    internal override ReplyFile? FileOf(IReadOnlyList<PingLine> lines, PingTurn turn)
    {
        var span = SpanOf(lines[0].Pings[0].Planned.At, turn);
        return WeekSketch.Of(
            Say(lines[0], turn),
            span,
            turn.Studio.View.Stock.HoldingBetween(span.From, span.Until),
            [.. turn.Materials.Select(turn.NeedOf).OfType<ShelfNeed>()]);
    }

    /// <inheritdoc/>
    internal override IEnumerable<Button> Buttons(IReadOnlyList<PingLine> lines, PingTurn turn) =>
        [new Button("Stock", "stock"), new Button("Pieces", "pieces")];

    // From the last that was said, so that nothing falls between two; the first from seven days before the first that
    // was ever planned, said or not.
    private static WeekSpan SpanOf(DateTimeOffset until, PingTurn turn)
    {
        var rows = turn.Studio.View.Reminders.About(PingSubjects.Kept(WeekPlan.Subject));
        if (rows.LastOrDefault(row => row.Verdict is PingRound.Sent or PingRound.SentLate && row.What.PlannedAt < until)
            is { } last)
        {
            return new WeekSpan(last.What.PlannedAt, until);
        }

        var first = rows.Select(row => row.What.PlannedAt).Append(until).Min();
        return new WeekSpan(
            turn.Zone.InstantOf(
                turn.Zone.DateOf(first).AddDays(-Days), TimeOnly.FromDateTime(turn.Zone.LocalOf(first))),
            until);
    }
}
