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
        $"Recoat tonight or not at all: the window of {Pieces.Named(line, turn)} is {FromTo(line, turn)}.";
}
