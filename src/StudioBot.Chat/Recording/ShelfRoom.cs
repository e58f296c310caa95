using StudioBot.Chat.Reading;
using StudioBot.Chat.Reading.Values;
using StudioBot.Chat.Replies;

namespace StudioBot.Chat.Recording;

/// <summary><c>shelf D in cupboard</c>: which room a shelf stands in; a new label puts one up.</summary>
internal sealed class ShelfRoom : Act
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

    /// <inheritdoc/>
    internal override Reply Do(Phrase said, Writing writing)
    {
        var rooms = writing.Session.Rooms;
        var label = said.Of(Shelf);
        var room = rooms.All().First(one => one.Name.Equals(said.Of(InRoom), StringComparison.OrdinalIgnoreCase));
        var shelf = rooms.Shelves().FirstOrDefault(one => one.Label.Equals(label, StringComparison.OrdinalIgnoreCase));
        if (shelf is null)
        {
            rooms.AddShelf(label, room, writing.Act);
            return new Reply(
                new Block.Headline($"Shelf {label} is put up in {room.Name}."),
                new Block.Line($"What lies on it has the air of {room.Name}."));
        }

        if (shelf.Room == room.Name)
        {
            return TalkedOf.Trouble($"{shelf.Label} stands in {room.Name} already. Nothing recorded.", "shelf");
        }

        rooms.Move(shelf, room, writing.Act);
        var on = writing.Session.Pieces.All().Where(piece => piece.Shelf == shelf.Label)
            .Select(piece => piece.Number).ToList();
        writing.Touch(on);
        return new Reply(
            new Block.Headline($"Shelf {shelf.Label} stands in {room.Name} now."),
            new Block.Line(on.Count == 0
                ? "Nothing lies on it."
                : $"On it: {TalkedOf.Words(on)}, with that room's air from now on."));
    }
}
