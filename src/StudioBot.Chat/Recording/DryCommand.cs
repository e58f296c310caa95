using StudioBot.Chat.Reading.Values;

namespace StudioBot.Chat.Recording;

/// <summary><c>dry 17</c>: a piece that you judge dry.</summary>
internal sealed class DryCommand() : Unopened(records: true)
{
    private static readonly PiecesSlot Pieces = new() { IsRequired = true, Most = 30 };

    /// <inheritdoc/>
    public override CommandSheet Sheet { get; } = new(
        "dry", Room.Recording, "A piece that you judge dry.",
        [Pieces, RecordSlots.Day],
        ["dry 17"])
    {
        Also = ["dried"],
    };
}
