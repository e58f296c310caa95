using System.Globalization;
using Dapper;
using Microsoft.Data.Sqlite;
using StudioBot.Records.Sample;

namespace StudioBot.Records.Tests.Schema;

/// <summary>Files that released programs wrote: they are never edited and always opened.</summary>
public sealed class GoldenFilesTests : IDisposable
{
    private readonly DirectoryInfo folder = Directory.CreateTempSubdirectory("golden-");

    public void Dispose() => folder.Delete(recursive: true);

    [Fact]
    public void The_invented_studio_as_version_1_wrote_it_becomes_the_one_that_is_written_now()
    {
        var old = Path.Combine(folder.FullName, "old.db");
        var now = Path.Combine(folder.FullName, "now.db");
        File.Copy(Path.Combine(AppContext.BaseDirectory, "Golden", "0001_sample.db"), old);
        Assert.Equal(1, Version(old));

        StudioFile.Open(old).Dispose();
        using (var fresh = StudioFile.Open(now))
        {
            fresh.Write(SampleStudio.WriteInto);
        }

        Assert.Equal(Version(now), Version(old));
        Assert.Equal(Rows(now), Rows(old));
    }

    [Fact]
    public void Nothing_refers_to_what_is_not_there_after_the_steps()
    {
        var old = Path.Combine(folder.FullName, "old.db");
        File.Copy(Path.Combine(AppContext.BaseDirectory, "Golden", "0001_sample.db"), old);

        StudioFile.Open(old).Dispose();

        using var connection = Raw(old);
        Assert.Empty(connection.Query("pragma foreign_key_check"));
        Assert.Equal("ok", connection.ExecuteScalar<string>("pragma integrity_check"));
    }

    private static int Version(string path)
    {
        using var connection = Raw(path);
        return connection.ExecuteScalar<int>("pragma user_version");
    }

    // The schema, and every row of every table, in an order that does not depend on how they came there.
    private static List<string> Rows(string path)
    {
        using var connection = Raw(path);
        var tables = connection.Query<string>("select name from sqlite_schema where type = 'table' order by name")
            .AsList();
        var schema = connection.Query<string>("select sql from sqlite_schema where sql is not null order by name");
        return [.. schema, .. tables.SelectMany(table => connection.Query($"select * from {table} order by 1, 2")
            .Cast<IDictionary<string, object?>>()
            .Select(row => $"{table}: {string.Join(" | ", row.Select(Shown))}"))];
    }

    private static string Shown(KeyValuePair<string, object?> column) =>
        string.Create(CultureInfo.InvariantCulture, $"{column.Key} {column.Value}");

    private static SqliteConnection Raw(string path) => new($"Data Source={path};Pooling=False");
}
