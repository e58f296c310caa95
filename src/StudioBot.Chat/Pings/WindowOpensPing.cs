using StudioBot.Craft.Reminders;

namespace StudioBot.Chat.Pings;

/// <summary>The recoat window is surely open.</summary>
internal sealed class WindowOpensPing : WindowPing
{
    /// <inheritdoc/>
    public override PingSheet Sheet { get; } = new(
        PingKind.WindowOpens, "opens", "When the next coat may go on.");

    /// <inheritdoc/>
    internal override string Say(PingLine line, PingTurn turn) =>
        $"Recoat window open for {Pieces.Named(line, turn)}: {FromTo(line, turn)}.";
}
