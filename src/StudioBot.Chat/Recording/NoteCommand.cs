using StudioBot.Chat.Reading.Values;

namespace StudioBot.Chat.Recording;

/// <summary><c>note 17 big cells lower left</c>: words kept with a piece.</summary>
internal sealed class NoteCommand() : Unopened(records: true)
{
    private static readonly PiecesSlot Piece = new() { IsRequired = true };
    private static readonly TextSlot Text = new("a note", "big cells lower left")
    {
        After = Piece,
        IsRequired = true,
        KeepsQuestions = true,
    };

    /// <inheritdoc/>
    public override CommandSheet Sheet { get; } = new(
        "note", Room.Recording, "Words kept with a piece.",
        [Piece, Text],
        ["note 17 big cells lower left"])
    {
        Also = ["notes", "noted"],
    };
}
