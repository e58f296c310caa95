using StudioBot.Craft.Reminders;

namespace StudioBot.Chat.Pings;

/// <summary>Before bedtime: the recoat window closes in the night.</summary>
internal sealed class WindowTonightPing : WindowPing
{
    private const string Else = "Missed, it must cure, be washed and sanded dull first.";

    /// <inheritdoc/>
    public override PingSheet Sheet { get; } = new(
        PingKind.WindowTonight, "tonight", "Before bedtime, when the window closes in the night.");

    /// <inheritdoc/>
    internal override string Say(PingLine line, PingTurn turn) =>
        IsOpen(line, turn)
            ? $"Recoat before bed: the window of {Pieces.Named(line, turn)} ends in the night, "
                + $"{FromTo(line, turn)}. {Else}"
            : $"The recoat window of {Pieces.Named(line, turn)} lies in the night, {FromTo(line, turn)}. {Else}";

    private static bool IsOpen(PingLine line, PingTurn turn) =>
        turn.CoatOf(Pieces.Of(line, turn)[0])?.Window is { } window && window.OpensBy <= turn.Now;
}
