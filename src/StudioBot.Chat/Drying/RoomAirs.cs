using StudioBot.Craft.Air;
using StudioBot.Craft.Drying;
using StudioBot.Craft.Units;
using StudioBot.Records;

namespace StudioBot.Chat.Drying;

/// <summary>The clocks of a studio's rooms, and what their air is now.</summary>
internal sealed class RoomAirs
{
    // So far back a clock may look for a reading that still holds, or for the mean that stands in.
    private static readonly TimeSpan Before = TimeSpan.FromDays(7);

    private static readonly RoomClock Unread = new([]);

    private readonly Dictionary<string, RoomClock> _clocks;
    private readonly Dictionary<string, RoomPace> _paces;
    private readonly Dictionary<string, RoomAir> _airs = [];
    private readonly Dictionary<string, string> _roomOfShelf;

    /// <summary>The rooms as they were read since a moment, and as they are now.</summary>
    /// <param name="view">The records.</param>
    /// <param name="since">The first pour that matters.</param>
    /// <param name="now">Readings behind it do not count for the pace to come.</param>
    public RoomAirs(StudioView view, DateTimeOffset since, DateTimeOffset now)
    {
        var readings = view.Rooms.Current().Concat(view.Rooms.Readings(since - Before))
            .Select(reading => (reading.Room, reading.At, Air: Air(reading.Temperature, reading.Humidity)))
            .ToLookup(reading => reading.Room);
        _clocks = readings.ToDictionary(
            room => room.Key,
            room => new RoomClock(room.Select(reading => new RoomReading(reading.At, reading.Air))));
        _paces = _clocks.ToDictionary(room => room.Key, room => room.Value.PaceAt(now));
        foreach (var room in readings)
        {
            if (room.Where(reading => reading.At <= now).OrderBy(reading => reading.At).ToList() is [.., var last])
            {
                _airs[room.Key] = last.Air;
            }
        }

        First = view.Rooms.All() is [var first, ..] ? first.Name : null;
        _roomOfShelf = view.Rooms.Shelves().ToDictionary(
            shelf => shelf.Label, shelf => shelf.Room, StringComparer.OrdinalIgnoreCase);
    }

    /// <summary>Where a piece lies that lies on no shelf; none in a studio without rooms.</summary>
    public string? First { get; }

    /// <summary>The room a shelf stands in.</summary>
    public string? Of(string? shelf) => shelf is null ? First : _roomOfShelf.GetValueOrDefault(shelf) ?? First;

    /// <summary>The room's clock; one that assumes its air where nobody read it.</summary>
    public RoomClock Clock(string? room) => room is null ? Unread : _clocks.GetValueOrDefault(room, Unread);

    /// <summary>How fast the room is expected to go on.</summary>
    public RoomPace Pace(string? room) =>
        room is null ? RoomPace.Assumed : _paces.GetValueOrDefault(room, RoomPace.Assumed);

    /// <summary>The room's air as last read; none where nobody has.</summary>
    public RoomAir? Now(string? room) => room is null ? null : _airs.GetValueOrDefault(room);

    // Air beyond what the formulas know counts as their coldest or warmest: too cold stays too cold.
    private static RoomAir Air(Temperature temperature, RelativeHumidity humidity) => new(
        Temperature.FromCelsius(Math.Clamp(temperature.Celsius, RoomAir.ColdestCelsius, RoomAir.WarmestCelsius)),
        humidity);
}
