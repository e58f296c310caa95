using StudioBot.Chat.Reading.Values;

namespace StudioBot.Chat.Recording;

/// <summary><c>kept 17</c>: a piece that stays.</summary>
internal sealed class KeptCommand() : Unopened(records: true)
{
    private static readonly PiecesSlot Pieces = new() { IsRequired = true, Most = 30 };

    /// <inheritdoc/>
    public override CommandSheet Sheet { get; } = new(
        "kept", Room.Recording, "A piece that stays.",
        [Pieces, RecordSlots.Day],
        ["kept 17"])
    {
        Also = ["keep", "finish", "finished"],
    };
}
