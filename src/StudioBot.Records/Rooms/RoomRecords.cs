using Dapper;
using Microsoft.Data.Sqlite;
using StudioBot.Craft.Units;
using StudioBot.Records.Acts;

namespace StudioBot.Records.Rooms;

/// <summary>The rooms, what their air was, and the shelves in them.</summary>
public sealed class RoomRecords
{
    private readonly SqliteConnection connection;

    internal RoomRecords(SqliteConnection connection) => this.connection = connection;

    private const string Rooms = """
        select id, name
        from room
        order by id
        """;

    /// <summary>All rooms, in the order they were named.</summary>
    public IReadOnlyList<Room> All() => connection.Query<Room>(Rooms).AsList();

    private const string Newest = """
        select room.name, reading.celsius, reading.humidity_percent as humidityPercent, reading.read_at as readAt
        from room
        join air_reading as reading on reading.id = (
            select newest.id
            from air_reading as newest
            where newest.room_id = room.id
              and newest.undone_id is null
            order by newest.read_at desc, newest.id desc
            limit 1)
        order by room.id
        """;

    /// <summary>The newest reading of every room that has one.</summary>
    public IReadOnlyList<RoomReading> Current() => [.. connection.Query<ReadingRow>(Newest).Select(row => row.From())];

    private const string Shelved = """
        select shelf.id, shelf.label, room.name as room
        from shelf
        join room on room.id = shelf.room_id
        order by shelf.label
        """;

    /// <summary>All shelves, by label.</summary>
    public IReadOnlyList<Shelf> Shelves() => connection.Query<Shelf>(Shelved).AsList();

    private const string NewRoom = """
        insert into room (name)
        values ($name)
        returning id
        """;

    /// <summary>Names a room.</summary>
    /// <exception cref="SqliteException">The name is taken, empty or longer than 40 characters.</exception>
    public Room Add(string name) => new(connection.ExecuteScalar<long>(NewRoom, new { name }), name);

    private const string NewReading = """
        insert into air_reading (room_id, celsius, humidity_percent, read_at, act_id)
        values ($room, $celsius, $percent, $at, $act)
        """;

    /// <summary>Keeps what somebody read; an earlier reading that comes late does not count as the newest.</summary>
    /// <exception cref="SqliteException">The temperature is outside −50 to 80 °C.</exception>
    public void Read(
        Room room, Temperature temperature, RelativeHumidity humidity, DateTimeOffset at, Act act) =>
        connection.Execute(NewReading, new
        {
            room = room.Id,
            celsius = temperature.Celsius,
            percent = humidity.Percent,
            at = Booked.At(at),
            act = act.Id,
        });

    private const string NewShelf = """
        insert into shelf (label, room_id)
        values ($label, $room)
        returning id
        """;

    /// <summary>Puts up a shelf.</summary>
    /// <exception cref="SqliteException">The label is taken, empty or longer than 20 characters.</exception>
    public Shelf AddShelf(string label, Room room) =>
        new(connection.ExecuteScalar<long>(NewShelf, new { label, room = room.Id }), label, room.Name);

    private sealed record ReadingRow(string Name, double Celsius, double HumidityPercent, long ReadAt)
    {
        public RoomReading From() => new(
            Name,
            Temperature.FromCelsius(Celsius),
            RelativeHumidity.FromPercent(HumidityPercent),
            Booked.Moment(ReadAt));
    }
}
