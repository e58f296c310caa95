using StudioBot.Chat.Reading.Values;

namespace StudioBot.Chat.Asking;

/// <summary><c>again 17 on 40cm round</c>: the recipe of a piece at a new size.</summary>
internal sealed class AgainCommand() : Unopened(records: false)
{
    private static readonly PiecesSlot Piece = new() { IsRequired = true };
    private static readonly SurfaceSlot Size = new() { IsRequired = true };

    /// <inheritdoc/>
    public override CommandSheet Sheet { get; } = new(
        "again", Room.Asking, "The recipe of a piece at a new size.",
        [Piece, Size],
        ["again 17 on 40cm round"])
    {
        Also = ["repeat", "redo"],
        Cues =
        [
            new("same {number} {size}"),
            new("like {number} {size}"),
            new("again {number} {size}"),
        ],
    };
}
