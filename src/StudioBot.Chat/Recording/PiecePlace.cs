using StudioBot.Records;
using StudioBot.Records.Pieces;

namespace StudioBot.Chat.Recording;

/// <summary>Where a piece lies, and so which room's air it has: on no shelf, the first room's.</summary>
internal static class PiecePlace
{
    /// <summary>The name of the room it lies in; none where the studio has no room.</summary>
    public static string? Room(string? shelf, StudioView view) => Rooms(view)(shelf);

    /// <summary>For many pieces at once: the name of the room of each shelf as they stand now, and of none.</summary>
    public static Func<string?, string?> Rooms(StudioView view)
    {
        var shelves = view.Rooms.Shelves().ToDictionary(shelf => shelf.Label, shelf => shelf.Room);
        var first = view.Rooms.All() is [var named, ..] ? named.Name : null;
        return shelf => shelf is not null && shelves.TryGetValue(shelf, out var room) ? room : first;
    }

    /// <summary>The numbers of the pieces in a room.</summary>
    public static IEnumerable<int> In(string room, StudioView view)
    {
        var rooms = Rooms(view);
        return view.Pieces.All().Where(piece => rooms(piece.Shelf) == room).Select(piece => piece.Number);
    }

    /// <summary>on B3, studio; on no shelf, studio air.</summary>
    public static string Words(Piece piece, StudioView view)
    {
        var room = Room(piece.Shelf, view);
        return piece.Shelf is { } shelf
            ? $"on {shelf}{(room is null ? "" : $", {room}")}"
            : $"on no shelf{(room is null ? "" : $", {room} air")}";
    }
}
