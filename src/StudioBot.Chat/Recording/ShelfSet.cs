using StudioBot.Chat.Reading.Values;

namespace StudioBot.Chat.Recording;

/// <summary><c>shelf 17 B3</c>: where a piece lies.</summary>
internal sealed class ShelfSet() : Unopened(records: true)
{
    private static readonly PiecesSlot Pieces = new() { IsRequired = true, Most = 30 };
    private static readonly ShelfSlot Shelf = new() { IsRequired = true };

    /// <inheritdoc/>
    public override CommandSheet Sheet { get; } = new(
        "shelf", Room.Recording, "Where a piece lies.",
        [Pieces, Shelf, RecordSlots.Day],
        ["shelf 17 B3"])
    {
        Also = ["moved"],
    };
}
