using StudioBot.Chat.Replies;
using StudioBot.Craft.Drying;
using StudioBot.Craft.Reminders;

namespace StudioBot.Chat.Pings;

/// <summary>Time to weigh, or to feel: at the likely day, in the morning.</summary>
internal sealed class WeighPing : DryingPing
{
    /// <inheritdoc/>
    public override PingSheet Sheet { get; } = new(
        PingKind.Weigh, "weigh", "On the likely day, when a weighing or a hand would tell.");

    /// <inheritdoc/>
    protected override DateTimeOffset? MomentOf(int piece, PingTurn turn) =>
        turn.Reckoning.Of(piece) is { LikelyAt: { } likely, LateAt: { } late } outlook
        && turn.MorningFrom(likely) is var morning
        && (outlook.QuietUntil is { } until && until > morning ? turn.MorningFrom(until) : morning) is var at
        && at < turn.MorningFrom(late)
            ? at
            : null;

    /// <inheritdoc/>
    internal override string Say(PingLine line, PingTurn turn) => $"Time to weigh or feel: {Pieces.Named(line, turn)}.";

    /// <inheritdoc/>
    internal override IEnumerable<Block> Under(IReadOnlyList<PingLine> lines, PingTurn turn)
    {
        foreach (var piece in Pieces.Of(lines, turn).Take(3))
        {
            if (turn.Reckoning.Of(piece) is { Outlook: ReadyOutlook.Expected(var estimate) } outlook)
            {
                yield return new Block.Line(
                    $"{piece}: {Show.Share(estimate.Probability)} sure it is dry; "
                    + $"ready by {turn.Day(outlook.LateAt!.Value)} nine times of ten.");
            }
        }
    }

    /// <inheritdoc/>
    internal override IEnumerable<Button> Buttons(IReadOnlyList<PingLine> lines, PingTurn turn)
    {
        if (Pieces.Of(lines, turn).Count > Pieces.MostTyped)
        {
            yield return new Button("Which are drying", "pieces drying");
            yield break;
        }

        var pieces = Pieces.Typed(Pieces.Of(lines, turn));
        yield return new Button("Dry", $"dry {pieces}");
        yield return new Button("Not yet", $"notyet {pieces} 2 days");
    }
}
