using StudioBot.Chat.Replies;
using StudioBot.Craft.Practice;
using StudioBot.Craft.Reminders;

namespace StudioBot.Chat.Pings;

/// <summary>Ten minutes after a coat: pass over the bubbles.</summary>
internal sealed class TorchPing : CoatPing
{
    // Common practice: bubbles rise within the first minutes.
    private static readonly TimeSpan After = TimeSpan.FromMinutes(10);

    /// <inheritdoc/>
    public override PingSheet Sheet { get; } = new(
        PingKind.Torch, "torch", "Ten minutes after a coat, for the bubbles.");

    /// <inheritdoc/>
    protected override DateTimeOffset? MomentOf(LaidCoat coat, PingTurn turn) => coat.At + After;

    /// <inheritdoc/>
    internal override string Say(PingLine line, PingTurn turn) =>
        $"Bubbles: pass the flame or a warm gun over {Pieces.Named(line, turn)}, short and moving.";

    /// <inheritdoc/>
    internal override IEnumerable<Block> Under(IReadOnlyList<PingLine> lines, PingTurn turn) =>
        [Cautions.InAWord(turn.Studio, SafetySubject.Torch)];
}
