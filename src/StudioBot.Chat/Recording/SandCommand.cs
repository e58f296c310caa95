using StudioBot.Chat.Reading.Values;

namespace StudioBot.Chat.Recording;

/// <summary><c>sand 18</c>: a piece sanded for the next coat.</summary>
internal sealed class SandCommand() : Unopened(records: true)
{
    private static readonly PiecesSlot Pieces = new() { IsRequired = true, Most = 30 };

    /// <inheritdoc/>
    public override CommandSheet Sheet { get; } = new(
        "sand", Room.Recording, "A piece sanded for the next coat.",
        [Pieces, RecordSlots.Day],
        ["sand 18"])
    {
        Also = ["sanded"],
    };
}
