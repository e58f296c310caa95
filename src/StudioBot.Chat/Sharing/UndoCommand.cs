using StudioBot.Chat.Reading.Values;

namespace StudioBot.Chat.Sharing;

/// <summary><c>undo</c>: takes back your last record.</summary>
internal sealed class UndoCommand() : Unopened(records: true)
{
    private static readonly PiecesSlot Piece = new()
    {
        Doubts = _ => "is no record: undo takes back the last one, whatever it was",
    };

    /// <inheritdoc/>
    public override CommandSheet Sheet { get; } = new(
        "undo", Room.Sharing, "Takes back your last record.",
        [Piece],
        ["undo"])
    {
        Also = ["revert"],
    };
}
