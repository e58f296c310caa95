using Microsoft.Data.Sqlite;

namespace StudioBot.Endurance.Tests;

/// <summary>A studio's file looked at from outside, beside or after the service that writes it.</summary>
internal sealed class RawStudio : IDisposable
{
    private readonly SqliteConnection connection;

    /// <summary>Looks, and leaves the log beside the file as it is.</summary>
    public RawStudio(string path)
    {
        connection = new SqliteConnection($"Data Source={path};Pooling=False;Mode=ReadWrite");
        connection.Open();
        const int NoCheckpointOnClose = 1006; // SQLITE_DBCONFIG_NO_CKPT_ON_CLOSE of sqlite3.h
        Assert.Equal(0, SQLitePCL.raw.sqlite3_db_config(connection.Handle, NoCheckpointOnClose, 1, out _));
        _ = One<long>("pragma query_only = on");
    }

    /// <summary>The first column of the first row; zero where there is none.</summary>
    public T? One<T>(string query, params object[] values)
    {
        using var command = connection.CreateCommand();
        command.CommandText = query;
        for (var at = 0; at < values.Length; at++)
        {
            command.Parameters.Add(new SqliteParameter($"${at + 1}", values[at]));
        }

        return command.ExecuteScalar() is T found ? found : default;
    }

    /// <summary>The first column of all rows.</summary>
    public List<string> All(string query)
    {
        using var command = connection.CreateCommand();
        command.CommandText = query;
        using var reader = command.ExecuteReader();
        var all = new List<string>();
        while (reader.Read())
        {
            all.Add(string.Join(" | ", Enumerable.Range(0, reader.FieldCount).Select(at => reader.IsDBNull(at) ? "" : reader.GetValue(at))));
        }

        return all;
    }

    public void Dispose() => connection.Dispose();
}
