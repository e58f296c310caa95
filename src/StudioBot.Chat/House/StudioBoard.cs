using StudioBot.Chat.Reading.Values;

namespace StudioBot.Chat.House;

/// <summary><c>board</c>: the message on the wall.</summary>
internal sealed class StudioBoard() : Unopened(records: true)
{
    private static readonly ChoiceSlot Board = new("", "board", ["board"]) { IsRequired = true };

    /// <inheritdoc/>
    public override CommandSheet Sheet { get; } = new(
        "studio", Room.House, "The message on the wall.",
        [Board],
        ["board"])
    {
        AlsoSaying = ["board"],
        StewardsOnly = true,
    };
}
