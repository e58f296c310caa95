using StudioBot.Chat.Reading;
using StudioBot.Chat.Reading.Values;

namespace StudioBot.Chat.Recording;

/// <summary><c>left 40 ml from 17</c>: what was left in the cups.</summary>
internal sealed class LeftCommand() : Unopened(records: true)
{
    private static readonly AmountSlot Amount = new("an amount", "40 ml")
    {
        IsRequired = true,
        Only = Measure.Volume,
        MayBeNothing = true,
    };
    private static readonly PiecesSlot Piece = new() { IsRequired = true };

    /// <inheritdoc/>
    public override CommandSheet Sheet { get; } = new(
        "left", Room.Recording, "What was left in the cups.",
        [Amount, Piece, RecordSlots.Day],
        ["left 40 ml from 17"])
    {
        Also = ["left over", "leftover", "leftovers"],
    };
}
