using StudioBot.Craft.Reminders;

namespace StudioBot.Chat.Pings;

/// <summary>The recoat window is about to close.</summary>
internal sealed class WindowClosesPing : WindowPing
{
    /// <inheritdoc/>
    public override PingSheet Sheet { get; } = new(
        PingKind.WindowCloses, "closes", "Two hours before the next coat may no longer go on.");

    /// <inheritdoc/>
    internal override string Say(PingLine line, PingTurn turn) =>
        $"Recoat window closes soon for {Pieces.Named(line, turn)}: {FromTo(line, turn)}.";
}
