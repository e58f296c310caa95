using StudioBot.Records.Pieces;

namespace StudioBot.Chat.Drying;

/// <summary>In which rooms a piece has lain since it was poured, and how long it has dried there.</summary>
internal sealed class PieceStay
{
    private readonly List<(DateTimeOffset From, string? Room)> _stays;
    private readonly RoomAirs _rooms;

    /// <summary>Of this piece.</summary>
    /// <param name="piece">Which.</param>
    /// <param name="lines">What happened to it, by the moment it is about.</param>
    /// <param name="rooms">The studio's rooms.</param>
    public PieceStay(Piece piece, IReadOnlyList<PieceLine> lines, RoomAirs rooms)
    {
        _rooms = rooms;
        _stays = [(piece.PouredAt, rooms.First)];
        var pour = lines.FirstOrDefault(line => line.What is PieceEvent.Poured)?.ActId;
        foreach (var line in lines)
        {
            if (line.What is PieceEvent.Shelved(var shelf))
            {
                // The shelf that was told with the pour has held it from the pour, whenever that was written.
                var from = line.ActId == pour || line.At < piece.PouredAt ? piece.PouredAt : line.At;
                _stays.Add((from, rooms.Of(shelf)));
            }
        }
    }

    /// <summary>Where it lies now.</summary>
    public string? Room => _stays[^1].Room;

    /// <summary>How long it had dried at a moment, in equivalent time; nothing before its pour.</summary>
    public TimeSpan Dried(DateTimeOffset moment) =>
        Parts(moment).Aggregate(TimeSpan.Zero, (sum, part) => sum + part.Dried);

    /// <summary>The room in which it had dried the most at a moment; none in a studio without rooms.</summary>
    public string? Mostly(DateTimeOffset moment) => Parts(moment)
        .GroupBy(part => part.Room)
        .MaxBy(room => room.Sum(part => part.Dried.Ticks)) is { } most ? most.Key : Room;

    private IEnumerable<(string? Room, TimeSpan Dried)> Parts(DateTimeOffset moment)
    {
        for (var i = 0; i < _stays.Count; i++)
        {
            var (from, room) = _stays[i];
            var to = i + 1 < _stays.Count && _stays[i + 1].From < moment ? _stays[i + 1].From : moment;
            if (to > from)
            {
                yield return (room, _rooms.Clock(room).Elapsed(from, to).Equivalent);
            }
        }
    }
}
