using Dapper;
using Microsoft.Data.Sqlite;
using StudioBot.Craft.Units;
using StudioBot.Records.Acts;

namespace StudioBot.Records.Rooms;

/// <summary>The rooms, what their air was, and the shelves in them.</summary>
public sealed class RoomRecords
{
    private readonly SqliteConnection connection;
    private readonly KeptRows kept;
    private readonly Remembered<IReadOnlyList<Room>> all;
    private readonly Remembered<IReadOnlyList<RoomReading>> current;
    private readonly Remembered<IReadOnlyList<Shelf>> shelves;

    internal RoomRecords(SqliteConnection connection)
    {
        this.connection = connection;
        kept = new KeptRows(connection);
        all = new(connection, ["room"], () => connection.Query<Room>(Rooms).AsList());
        current = new(connection, ["room", "air_reading"], () =>
            [.. connection.Query<ReadingRow>(Newest).Select(row => row.From())]);
        shelves = new(connection, ["room", "shelf"], () => connection.Query<Shelf>(Shelved).AsList());
    }

    private const string Rooms = """
        select id, name
        from room
        order by id
        """;

    /// <summary>All rooms, in the order they were named.</summary>
    public IReadOnlyList<Room> All() => all.Value;

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
    public IReadOnlyList<RoomReading> Current() => current.Value;

    private const string Shelved = """
        select shelf.id, shelf.label, room.name as room
        from shelf
        join room on room.id = shelf.room_id
        order by shelf.label
        """;

    /// <summary>All shelves, by label.</summary>
    public IReadOnlyList<Shelf> Shelves() => shelves.Value;

    private const string NewRoom = """
        insert into room (name)
        values ($name)
        returning id
        """;

    /// <summary>Names a room.</summary>
    /// <exception cref="SqliteException">The name is taken, empty or longer than 40 characters.</exception>
    public Room Add(string name, Act? act = null)
    {
        var id = connection.ExecuteScalar<long>(NewRoom, new { name });
        kept.Added(act, KeptTable.Room, id);
        return new Room(id, name);
    }

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
    public Shelf AddShelf(string label, Room room, Act? act = null)
    {
        var id = connection.ExecuteScalar<long>(NewShelf, new { label, room = room.Id });
        kept.Added(act, KeptTable.Shelf, id);
        return new Shelf(id, label, room.Name);
    }

    private const string MoveOne = """
        update shelf
        set room_id = $room
        where id = $shelf
        """;

    /// <summary>Moves a shelf, with all that lies on it, into a room.</summary>
    public void Move(Shelf shelf, Room room, Act act) => kept.Change(act, KeptTable.Shelf, shelf.Id, () =>
        connection.Execute(MoveOne, new { shelf = shelf.Id, room = room.Id }));

    private const string ReadSince = """
        select room.name, reading.celsius, reading.humidity_percent as humidityPercent, reading.read_at as readAt
        from air_reading as reading
        join room on room.id = reading.room_id
        where reading.undone_id is null
          and reading.read_at >= $since
        order by reading.read_at, reading.id
        """;

    /// <summary>All readings since then, the oldest first.</summary>
    public IReadOnlyList<RoomReading> Readings(DateTimeOffset since) =>
        [.. connection.Query<ReadingRow>(ReadSince, new { since = Booked.At(since) }).Select(row => row.From())];

    private sealed record ReadingRow(string Name, double Celsius, double HumidityPercent, long ReadAt)
    {
        public RoomReading From() => new(
            Name,
            Temperature.FromCelsius(Celsius),
            RelativeHumidity.FromPercent(HumidityPercent),
            Booked.Moment(ReadAt));
    }
}
