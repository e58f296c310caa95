using System.Globalization;
using Microsoft.Data.Sqlite;
using StudioBot.Host.Tests.Support;
using StudioBot.Host.Turns;
using StudioBot.Records;
using StudioBot.Records.Post;
using Xunit.Abstractions;

namespace StudioBot.Host.Tests.Turns;

/// <summary>A disk that is full at any moment of a record: none of it stands, its author hears so, and it is booked once there is room.</summary>
public sealed class FullDiskTests(ITestOutputHelper output) : IDisposable
{
    private const int Positions = 200;
    private const int Rare = 4;
    private const int Each = 10;

    private static readonly DateTimeOffset Began = new(2026, 11, 25, 9, 0, 0, TimeSpan.Zero);

    private readonly Desk desk = new();

    public void Dispose() => desk.Dispose();

    [Fact]
    public void Whatever_moment_the_disk_is_full_at_nothing_of_the_record_stands_and_later_all_of_it()
    {
        var seed = int.TryParse(Environment.GetEnvironmentVariable("STUDIOBOT_SEED"), CultureInfo.InvariantCulture, out var given) ? given : 20261126;
        var random = new Random(seed);
        var (broke, update, founded) = (0, 0, Acts());
        for (var at = 0; broke < Positions; at++)
        {
            Assert.True(at < 10 * Positions, "The disk never fills.");
            var row = Came(++update, random);
            using var before = Snapshot();
            desk.File.LeaveRoom(random.Next(Rare) == 0 ? 1 : 0);
            try
            {
                desk.Clerk().Settle(row, desk.Now);
            }
            catch (UnwritableStudioException full)
            {
                broke++;
                Assert.Equal("The disk is full.", full.Message);
                Assert.Equal(Books(before), Books());
                desk.File.LeaveRoom(null);
                Assert.Null(desk.Clerk().Settle(row, desk.Now));
            }

            desk.File.LeaveRoom(null);
        }

        output.WriteLine($"full disk: seed {seed}, full in {broke} of {update} records, nothing of any stood");
        Assert.Equal(founded + update, Acts());
    }

    [Fact]
    public async Task Its_author_hears_once_that_it_is_not_saved_and_gets_the_answer_when_there_is_room()
    {
        for (var nth = 1; nth <= Each; nth++)
        {
            desk.Store(desk.Message(nth, Desk.Nora, nth, Long(nth)), desk.Message(100 + nth, Desk.Pia, nth, Long(nth)));
        }

        var founded = Acts();
        desk.File.LeaveRoom(0);
        using var stop = new CancellationTokenSource();
        var loop = desk.Loop().Run(stop.Token);
        await Patience.Until(() => desk.Wire.All.Count == 2);
        await Patience.Until(desk.Clock, TimeSpan.FromSeconds(1), () => desk.Now > Began + (Outage.Rest * 3));
        Assert.Equal([Desk.Nora, Desk.Pia], desk.Wire.All.Select(said => said.Chat).Order());
        Assert.All(desk.Wire.All, said => Assert.StartsWith("Not saved", said.Letter.Plain, StringComparison.Ordinal));
        Assert.Equal("The disk is full.", desk.Outage.Why);

        desk.File.LeaveRoom(null);
        var began = desk.Now;

        // In small steps, so that what the machine takes for the work hardly counts on our clock.
        await Patience.Until(desk.Clock, TimeSpan.FromMilliseconds(50), () => Acts() == founded + (2 * Each));
        Assert.InRange(desk.Now - began, TimeSpan.Zero, TimeSpan.FromSeconds(30));
        Assert.Null(desk.Outage.Why);
        Assert.Equal(2 * Each, desk.Posted().Count);
        Assert.Equal(2, desk.Wire.All.Count);
        await Patience.End(loop, stop);
    }

    private InboxRow Came(int update, Random random)
    {
        desk.Clock.Advance(TimeSpan.FromMinutes(2));
        desk.Store(desk.Message(update, Desk.Nora, update, random.Next(4) == 0
            ? string.Create(CultureInfo.InvariantCulture, $"room {15 + random.Next(10)}C {40 + random.Next(30)}%")
            : Long(update, random.Next(50, 180))));
        return desk.File.Write(session => session.Inbox.Next()).Single();
    }

    // So long that the pages it stands on are soon full.
    private static string Long(int nth, int letters = 150) =>
        string.Create(CultureInfo.InvariantCulture, $"remind me in {1 + nth % 20} days to wash {new string('x', letters)} {new string('y', nth % 20)}");

    private int Acts()
    {
        using var books = Opened();
        return Rows(books, "select id from act").Count;
    }

    // Every table, row by row, without what waits in the inbox.
    private List<string> Books()
    {
        using var books = Opened();
        return Books(books);
    }

    private static List<string> Books(SqliteConnection books)
    {
        var tables = Rows(books, "select name from sqlite_schema where type = 'table' order by name");
        return [.. tables.SelectMany(table => Rows(books, $"select * from \"{table}\"").Select(row => $"{table}: {row}"))];
    }

    // Sees the books for ever as they are now.
    private SqliteConnection Snapshot()
    {
        var books = Opened();
        Rows(books, "begin");
        Rows(books, "select count(*) from act");
        return books;
    }

    private SqliteConnection Opened()
    {
        var books = new SqliteConnection(new SqliteConnectionStringBuilder { DataSource = desk.Path, Pooling = false }.ToString());
        books.Open();
        return books;
    }

    private static List<string> Rows(SqliteConnection books, string text)
    {
        using var command = books.CreateCommand();
        command.CommandText = text;
        using var row = command.ExecuteReader();
        List<string> rows = [];
        while (row.Read())
        {
            rows.Add(string.Join('|', Enumerable.Range(0, row.FieldCount).Select(row.GetValue)));
        }

        return rows;
    }
}
