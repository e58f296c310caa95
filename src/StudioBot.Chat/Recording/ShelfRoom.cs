using StudioBot.Chat.Reading;
using StudioBot.Chat.Reading.Values;

namespace StudioBot.Chat.Recording;

/// <summary><c>shelf D in cupboard</c>: which room a shelf stands in.</summary>
internal sealed class ShelfRoom() : Unopened(records: true)
{
    private static readonly ShelfSlot Shelf = new() { IsRequired = true };
    private static readonly NameSlot InRoom = new(NameKind.Room, "room", "a room", "cupboard")
    {
        IsRequired = true,
        Leads = ["in"],
    };

    /// <inheritdoc/>
    public override CommandSheet Sheet { get; } = new(
        "shelf", Room.Recording, "Which room a shelf stands in.",
        [Shelf, InRoom],
        ["shelf D in cupboard"]);
}
