using StudioBot.Craft.Reminders;

namespace StudioBot.Chat.Pings;

/// <summary>A coated piece may be moved.</summary>
internal sealed class HandlingPing : CoatPing
{
    /// <inheritdoc/>
    public override PingSheet Sheet { get; } = new(PingKind.Handling, "handling", "When a coated piece may be moved.");

    /// <inheritdoc/>
    protected override DateTimeOffset? MomentOf(LaidCoat coat, PingTurn turn) => coat.Handling;

    /// <inheritdoc/>
    internal override string Say(PingLine line, PingTurn turn) =>
        $"May be moved with care: {Pieces.Named(line, turn)}. Not loaded, not wrapped yet.";
}
