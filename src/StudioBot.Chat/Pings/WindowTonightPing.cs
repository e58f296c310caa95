using StudioBot.Craft.Reminders;

namespace StudioBot.Chat.Pings;

/// <summary>Before bedtime: the recoat window closes in the night.</summary>
internal sealed class WindowTonightPing : WindowPing
{
    /// <inheritdoc/>
    public override PingSheet Sheet { get; } = new(
        PingKind.WindowTonight, "tonight", "Before bedtime, when the window closes in the night.");

    /// <inheritdoc/>
    internal override string Say(PingLine line, PingTurn turn) =>
        $"The recoat window of {Pieces.Named(line, turn)} ends in the night: {FromTo(line, turn)}. "
        + "Coat then, or it must cure, be washed and sanded dull first.";
}
