using StudioBot.Chat.Reading.Values;

namespace StudioBot.Chat.Recording;

/// <summary><c>label 17</c>: labels to print.</summary>
internal sealed class LabelCommand() : Unopened(records: false)
{
    private static readonly PiecesSlot Pieces = new() { IsRequired = true, Most = 30 };

    /// <inheritdoc/>
    public override CommandSheet Sheet { get; } = new(
        "label", Room.Recording, "Labels to print.",
        [Pieces],
        ["label 17", "label 17 18 21"])
    {
        Also = ["labels"],
    };
}
