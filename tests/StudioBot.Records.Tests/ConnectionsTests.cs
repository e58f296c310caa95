using Dapper;
using Microsoft.Data.Sqlite;

namespace StudioBot.Records.Tests;

public sealed class ConnectionsTests : IDisposable
{
    private readonly DirectoryInfo folder = Directory.CreateTempSubdirectory("studio-");

    public void Dispose() => folder.Delete(recursive: true);

    [Theory]
    [InlineData("synchronous", 2)]                  // full: a commit outlives a power cut
    [InlineData("foreign_keys", 1)]
    [InlineData("busy_timeout", 5000)]              // milliseconds
    [InlineData("journal_size_limit", 64 << 20)]    // bytes
    [InlineData("trusted_schema", 0)]
    [InlineData("ignore_check_constraints", 0)]
    public void Every_connection_is_told(string pragma, long value)
    {
        var path = Path.Combine(folder.FullName, "studio.db");
        using var writer = Connections.Writer(path, _ => { });
        using var reader = Connections.Reader(path);
        using var inMemory = Connections.InMemory();

        SqliteConnection[] all = [writer, reader, inMemory];
        Assert.All(all, connection => Assert.Equal(value, connection.ExecuteScalar<long>($"pragma {pragma}")));
    }

    // Opened as the database opens what this user may not write, whoever this user is.
    [Fact]
    public void A_file_that_may_only_be_read_is_refused_when_it_is_opened()
    {
        var path = Path.Combine(folder.FullName, "studio.db");
        Connections.Writer(path, _ => { }).Dispose();
        var bytes = File.ReadAllBytes(path);

        var no = Assert.Throws<SqliteException>(() => Connections.Writer($"file:{path}?mode=ro", _ => { }));

        Assert.True(new UnreadableStudioException(no).IsForbidden);
        Assert.Equal(bytes, File.ReadAllBytes(path));
    }
}
