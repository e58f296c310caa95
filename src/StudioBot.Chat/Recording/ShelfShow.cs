using StudioBot.Chat.Reading.Values;

namespace StudioBot.Chat.Recording;

/// <summary><c>shelf</c>: what lies where.</summary>
internal sealed class ShelfShow() : Unopened(records: false)
{
    private static readonly ShelfSlot Shelf = new();
    private static readonly PiecesSlot Piece = new();

    /// <inheritdoc/>
    public override CommandSheet Sheet { get; } = new(
        "shelf", Room.Recording, "What lies where.",
        [Shelf, Piece],
        ["shelf", "shelf B", "where is 17?"])
    {
        Cues =
        [
            new("where/wheres {number}"),
            new("what/whats/which/who shelf"),
            new("where piece {number}"),
        ],
    };
}
