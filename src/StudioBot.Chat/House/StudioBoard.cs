using StudioBot.Chat.Reading;
using StudioBot.Chat.Reading.Values;
using StudioBot.Chat.Replies;
using StudioBot.Chat.Sharing;

namespace StudioBot.Chat.House;

/// <summary><c>board</c>: the wall, as a steward may call it.</summary>
internal sealed class StudioBoard : Act
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

    /// <inheritdoc/>
    internal override Reply Do(Phrase said, Writing writing) => Wall.Hang(writing);
}
