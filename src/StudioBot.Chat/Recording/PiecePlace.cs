using StudioBot.Records;
using StudioBot.Records.Pieces;

namespace StudioBot.Chat.Recording;

/// <summary>Where a piece lies, and so which room's air it has: on no shelf, the first room's.</summary>
internal static class PiecePlace
{
    /// <summary>The name of the room it lies in; none where the studio has no room.</summary>
    public static string? Room(string? shelf, StudioView view) =>
        shelf is not null && view.Rooms.Shelves().FirstOrDefault(one => one.Label == shelf) is { } known
            ? known.Room
            : view.Rooms.All() is [var first, ..] ? first.Name : null;

    /// <summary>The numbers of the pieces in a room.</summary>
    public static IEnumerable<int> In(string room, StudioView view)
    {
        var shelves = view.Rooms.Shelves().ToDictionary(shelf => shelf.Label, shelf => shelf.Room);
        var first = view.Rooms.All() is [var named, ..] ? named.Name : null;
        return view.Pieces.All()
            .Where(piece => (piece.Shelf is { } shelf ? shelves.GetValueOrDefault(shelf) : first) == room)
            .Select(piece => piece.Number);
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
