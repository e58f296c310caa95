using StudioBot.Chat.Reading.Values;

namespace StudioBot.Chat.Asking;

/// <summary><c>why cracks</c>: likely causes of a fault, and what to change.</summary>
internal sealed class WhyCommand() : Unopened(records: false)
{
    private static readonly PiecesSlot Piece = new();
    private static readonly FaultSlot Fault = new() { IsRequired = true };

    /// <inheritdoc/>
    public override CommandSheet Sheet { get; } = new(
        "why", Room.Asking, "Likely causes of a fault, and what to change.",
        [Piece, Fault],
        ["why cracks", "why is my resin sticky"])
    {
        Cues = [new("why")],
        Also = ["whats wrong", "what causes"],
    };
}
