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

    private const string Pragmas = """
        pragma busy_timeout = 5000;
        pragma synchronous = full;
        pragma foreign_keys = on;
        pragma journal_size_limit = 67108864;
        pragma trusted_schema = off;
        """;

    /// <summary>Opens or makes the file, with a log beside it that readers can look past, and the newest schema.
    /// </summary>
    /// <exception cref="NewerStudioException">It was written by a newer program.</exception>
    public static SqliteConnection Writer(string path) => UpToDate(path, "pragma journal_mode = wal");

    /// <summary>A studio that lives in this connection only.</summary>
    public static SqliteConnection InMemory() => UpToDate(":memory:", "pragma journal_mode = memory");

    /// <summary>A connection for looking: whoever keeps it too long still cannot write through it.</summary>
    public static SqliteConnection Reader(string path)
    {
        var connection = Opened(path, SqliteOpenMode.ReadWrite);
        connection.Execute(LookOnly);
        return connection;
    }

    // The version is looked at before the journal is chosen: a newer program's file is left as it is.
    private static SqliteConnection UpToDate(string source, string journal)
    {
        var connection = Opened(source, SqliteOpenMode.ReadWriteCreate);
        try
        {
            SchemaSteps.RefuseNewer(connection);
            connection.Execute(journal);
            SchemaSteps.Apply(connection);
            return connection;
        }
        catch
        {
            connection.Dispose();
            throw;
        }
    }

    // Without the library's pool: closing the studio must close its file.
    private static SqliteConnection Opened(string source, SqliteOpenMode mode)
    {
        var connection = new SqliteConnection(new SqliteConnectionStringBuilder
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
