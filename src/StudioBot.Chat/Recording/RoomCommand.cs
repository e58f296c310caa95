using StudioBot.Chat.Reading;
using StudioBot.Chat.Reading.Values;

namespace StudioBot.Chat.Recording;

/// <summary><c>room 20C 58%</c>: the air of a room.</summary>
internal sealed class RoomCommand() : Unopened(records: true)
{
    private static readonly AirSlot Air = new() { TakesBare = true, NeedsBoth = true, IsRequired = true };
    private static readonly NameSlot Which = new(NameKind.Room, "room", "a room", "cupboard") { IsStrict = false };

    /// <inheritdoc/>
    public override CommandSheet Sheet { get; } = new(
        "room", Room.Recording, "The air of a room.",
        [Which, Air, RecordSlots.Day],
        ["room 20C 58%", "room cupboard 23C 45%"])
    {
        Also = ["rooms"],
    };
}
