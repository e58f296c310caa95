using Dapper;
using Microsoft.Data.Sqlite;
using StudioBot.Records.Backups;
using StudioBot.Records.Sample;
using StudioBot.Records.Schema;

namespace StudioBot.Records.Tests.Schema;

/// <summary>Files as each released version left them: they are never edited and always opened.</summary>
public sealed class GoldenFilesTests : IDisposable
{
    private const int DiskFull = 13;   // SQLITE_FULL, from memory

    private readonly DirectoryInfo folder = Directory.CreateTempSubdirectory("golden-");

    private string Old => Path.Combine(folder.FullName, "old.db");

    public void Dispose() => folder.Delete(recursive: true);

    [Fact]
    public void The_invented_studio_as_version_1_wrote_it_becomes_the_one_that_is_written_now()
    {
        var now = Path.Combine(folder.FullName, "now.db");
        Write(1);

        StudioFile.Open(Old).Dispose();
        using (var fresh = StudioFile.Open(now))
        {
            fresh.Write(SampleStudio.WriteInto);
        }

        Assert.Equal(Dump.Of(now), Dump.Of(Old));
    }

    [Fact]
    public void Every_version_that_was_released_has_its_file() => Assert.Equal(
        Enumerable.Range(1, SchemaSteps.Newest),
        Directory.GetFiles(Golden).Select(file => int.Parse(Path.GetFileName(file)[..4], null)).Order());

    [Theory]
    [MemberData(nameof(Versions))]
    public void A_file_of_a_released_version_becomes_one_of_this_program_with_all_it_held(int version)
    {
        Write(version);
        var held = Dump.RowsOf(Old);

        StudioFile.Open(Old).Dispose();

        var fresh = Path.Combine(folder.FullName, "fresh.db");
        StudioFile.Open(fresh).Dispose();
        Assert.Equal(Dump.SchemaOf(fresh), Dump.SchemaOf(Old));
        Assert.Equal(SchemaSteps.Newest, FileHeader.VersionOf(Old));
        Assert.Empty(Proof.OfCopy(Old, rows: null));
        Assert.Empty(Lost(held, version));
    }

    [Theory]
    [MemberData(nameof(Versions))]
    public void Before_the_first_step_it_is_backed_up_as_it_was(int version)
    {
        Write(version);
        var held = Dump.Of(Old);

        StudioFile.Open(Old).Dispose();

        var backups = BackupFolder.Of(Old);
        if (version == SchemaSteps.Newest)
        {
            Assert.Empty(backups.All());
            return;
        }

        var made = Assert.Single(backups.All());
        Assert.Equal((BackupKind.Upgrade, version), (made.Kind, made.Version));
        Assert.Empty(Proof.Of(backups.FileOf(made)));
        Assert.Equal(held, Dump.Of(backups.FileOf(made)));
    }

    [Fact]
    public void Without_a_good_backup_no_step_is_applied()
    {
        Write(4);
        Ask<object>("update lot_sum set units = units + 1 where lot_id = 1");
        var held = Dump.Of(Old);

        Assert.Throws<UnprovenBackupException>(() => StudioFile.Open(Old));

        Assert.Equal(held, Dump.Of(Old));
        Assert.Empty(BackupFolder.Of(Old).All());
    }

    // The disk is full after every possible number of pages: each place in each step is a place to fail at.
    [Theory]
    [MemberData(nameof(Versions))]
    public void A_step_that_fails_on_its_way_leaves_the_version_before_it(int version)
    {
        if (version == SchemaSteps.Newest)
        {
            return;
        }

        Write(version);
        var held = Dump.Of(Old);
        var failed = 0;
        using (var connection = Dump.Raw(Old))
        {
            connection.Execute("vacuum");
            connection.Execute("pragma foreign_keys = on; pragma cache_size = 5");
            var pages = connection.ExecuteScalar<int>("pragma page_count");
            for (var spare = 0; !Applied(connection, version + 1, pages + spare); spare++)
            {
                failed++;
                Assert.Equal(version, SchemaSteps.VersionOf(connection));
                Assert.Equal(held, Dump.Of(Old));
            }
        }

        Assert.Equal(version + 1, FileHeader.VersionOf(Old));
        var fresh = Path.Combine(folder.FullName, "fresh.db");
        using (var connection = Dump.Raw(fresh))
        {
            SchemaSteps.Apply(connection, version + 1);
        }

        Assert.Empty(Dump.SchemaOf(Old).Except(Dump.SchemaOf(fresh)));
        Assert.Empty(Dump.SchemaOf(fresh).Except(Dump.SchemaOf(Old)));
        Assert.True(failed > 0, "No step found the disk full.");
        Assert.Empty(Proof.OfCopy(Old, rows: null));
    }

    /// <summary>Every version that was released.</summary>
    public static TheoryData<int> Versions() => [.. Enumerable.Range(1, SchemaSteps.Newest)];

    private static string Golden => Path.Combine(AppContext.BaseDirectory, "Golden");

    private static bool Applied(SqliteConnection connection, int version, int mostPages)
    {
        connection.Execute($"pragma max_page_count = {mostPages}");
        try
        {
            SchemaSteps.Apply(connection, version);
            return true;
        }
        catch (SqliteException full) when (full.SqliteErrorCode == DiskFull)
        {
            return false;
        }
    }

    // By the columns that a table had then. The first step to books moved what stood in lots and pieces into lines.
    private List<string> Lost(Dictionary<string, List<string>> held, int version)
    {
        var then = Path.Combine(folder.FullName, "then.db");
        Write(version, then);
        using var before = Dump.Raw(then);
        using var after = Dump.Raw(Old);
        List<string> lost = [];
        foreach (var table in held.Keys.Where(table => table != "sqlite_sequence"))
        {
            var columns = Dump.Columns(before, table).Intersect(Dump.Columns(after, table)).ToList();
            lost.AddRange(Dump.Rows(before, table, columns).Except(Dump.Rows(after, table, columns)));
        }

        return lost;
    }

    private void Write(int version, string? to = null)
    {
        var golden = Directory.GetFiles(Golden, $"{version:0000}_*").Single();
        if (Path.GetExtension(golden) == ".db")
        {
            File.Copy(golden, to ?? Old);
            return;
        }

        using var connection = Dump.Raw(to ?? Old);
        connection.Execute("pragma foreign_keys = off");
        connection.Execute(File.ReadAllText(golden));
    }

    private T? Ask<T>(string query)
    {
        using var connection = Dump.Raw(Old);
        return connection.ExecuteScalar<T>(query);
    }
}
