using Dapper;
using Microsoft.Data.Sqlite;
using StudioBot.Records.Schema;

namespace StudioBot.Records;

/// <summary>How a studio's file is opened: what every connection to it must be told.</summary>
internal static class Connections
{
    public const string LookOnly = "pragma query_only = on";
    public const string WriteToo = "pragma query_only = off";

    private const int SecondsToWait = 5;

    private const string Wait = "pragma busy_timeout = 5000";
    private const string WaitForNobody = "pragma busy_timeout = 0";

    // Where somebody reads from the log it says so in a row, and writes back what it can.
    private const string Checkpoint = "pragma wal_checkpoint(truncate)";

    private const string Pragmas = $"""
        {Wait};
        pragma synchronous = full;
        pragma foreign_keys = on;
        pragma journal_size_limit = 67108864;
        pragma trusted_schema = off;
        """;

    // Looks at every page but not at whether the indexes agree: the first fault tells.
    private const string Quick = "pragma quick_check(1)";

    // The tables' own rules held when a row was written; to ask them again of every row takes four times as long as all
    // else, and the nightly look does it.
    private const string WithoutRules = "pragma ignore_check_constraints = on";
    private const string WithRules = "pragma ignore_check_constraints = off";

    private const string Wary = "pragma cell_size_check = on";

    private const string Objects = "select count(*) from sqlite_schema";

    // A file that may not be written is opened, and a transaction begun, all the same; only a write says so.
    private const string TryToWrite = "begin immediate; create table write_try (id integer); rollback";

    private const string Memory = ":memory:";
    private const string MemoryJournal = "pragma journal_mode = memory";

    // All steps take fifty times as long as a copy of what came of them.
    private static readonly Lazy<SqliteConnection> New = new(() => UpToDate(Memory, MemoryJournal, _ => { }));

    // What the mapper worked out of a statement holds in every studio's file, whose tables are the same; by itself it
    // would work it out anew for each.
    static Connections() =>
        SqlMapper.ConnectionStringComparer = EqualityComparer<string>.Create((_, _) => true, _ => 0);

    /// <summary>Opens or makes the file, with a log beside it that readers can look past, and the newest schema.
    /// </summary>
    /// <param name="path">The file.</param>
    /// <param name="beforeSteps">Called once before a studio that is there is brought up to date.</param>
    /// <exception cref="NewerStudioException">It was written by a newer program.</exception>
    /// <exception cref="UnreadableStudioException">A quick look finds it damaged, or it is no studio.</exception>
    public static SqliteConnection Writer(string path, Action<SqliteConnection> beforeSteps) =>
        UpToDate(path, "pragma journal_mode = wal", beforeSteps);

    /// <summary>A studio that lives in this connection only.</summary>
    public static SqliteConnection InMemory()
    {
        var connection = Opened(Memory, SqliteOpenMode.ReadWriteCreate);
        connection.Execute(MemoryJournal);
        lock (New)
        {
            New.Value.BackupDatabase(connection);
        }

        return connection;
    }

    /// <summary>A connection for looking: whoever keeps it too long still cannot write through it.</summary>
    public static SqliteConnection Reader(string path)
    {
        var connection = Opened(path, SqliteOpenMode.ReadWrite);
        connection.Execute(LookOnly);
        return connection;
    }

    /// <summary>Looks at a file that nobody writes to, wherever it lies: nothing is locked, no log or journal beside it
    /// is looked at, and nothing is written.</summary>
    /// <remarks>A check of the whole file leaves out the tables' own rules here, as for every file that is opened only
    /// to be read.</remarks>
    public static SqliteConnection AtRest(string path)
    {
        var place = string.Join('/', Path.GetFullPath(path).Split(Path.DirectorySeparatorChar)
            .Select(Uri.EscapeDataString));
        var connection = Opened($"file:{place}?immutable=1", SqliteOpenMode.ReadOnly);
        connection.Execute(Wary);
        return connection;
    }

    /// <summary>Looks at a copy that we made ourselves of a file that may come from anywhere; nothing lies beside it.
    /// </summary>
    public static SqliteConnection OwnCopy(string path)
    {
        var connection = Reader(path);
        connection.Execute(Wary);
        return connection;
    }

    /// <summary>A file that is still empty, to copy a studio into.</summary>
    public static SqliteConnection Empty(string path) => Opened(path, SqliteOpenMode.ReadWriteCreate);

    /// <summary>Writes back and empties the log, as far as nobody reads from it; waits for none of them.</summary>
    public static void ShortenLog(SqliteConnection writer)
    {
        writer.Execute(WaitForNobody);
        try
        {
            writer.Execute(Checkpoint);
        }
        finally
        {
            writer.Execute(Wait);
        }
    }

    /// <summary>From now on the file is whole by itself, without a log beside it.</summary>
    public static void WithoutLog(SqliteConnection connection) => connection.Execute("pragma journal_mode = delete");

    // The version is looked at before the journal is chosen: a newer program's file is left as it is.
    private static StudioConnection UpToDate(string source, string journal, Action<SqliteConnection> beforeSteps)
    {
        var connection = Opened(source, SqliteOpenMode.ReadWriteCreate);
        try
        {
            SchemaSteps.RefuseNewer(connection);
            connection.Execute(TryToWrite);
            connection.Execute(journal);
            RefuseDamaged(connection);
            if (SchemaSteps.AreMissing(connection))
            {
                beforeSteps(connection);
            }

            SchemaSteps.Apply(connection);
            return connection;
        }
        catch
        {
            connection.Dispose();
            throw;
        }
    }

    private static void RefuseDamaged(SqliteConnection connection)
    {
        connection.Execute(WithoutRules);
        var found = connection.ExecuteScalar<string>(Quick);
        connection.Execute(WithRules);
        if (found != "ok")
        {
            throw new UnreadableStudioException(found ?? "nothing can be read in it");
        }

        if (SchemaSteps.VersionOf(connection) == 0 && connection.ExecuteScalar<long>(Objects) > 0)
        {
            throw new UnreadableStudioException("it holds something else");
        }
    }

    // Without the library's pool: closing the studio must close its file.
    private static StudioConnection Opened(string source, SqliteOpenMode mode)
    {
        var connection = new StudioConnection(new SqliteConnectionStringBuilder
        {
            DataSource = source,
            Mode = mode,
            Pooling = false,
            DefaultTimeout = SecondsToWait,
        }.ToString());
        connection.Open();
        connection.Execute(Pragmas);
        return connection;
    }
}
