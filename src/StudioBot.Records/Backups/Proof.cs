using System.Security.Cryptography;
using Dapper;
using Microsoft.Data.Sqlite;

namespace StudioBot.Records.Backups;

/// <summary>Opens a file anew and looks at all of it.</summary>
public static class Proof
{
    private const string Tables = """
        select name
        from sqlite_schema
        where type = 'table'
          and name not like 'sqlite\_%' escape '\'
        order by name
        """;

    /// <summary>All that is wrong with a backup, in plain lines; none where it is whole and, byte for byte, the one
    /// that its manifest tells of. Nothing is written, not even beside it.</summary>
    /// <exception cref="IOException">It can't be read.</exception>
    /// <exception cref="UnauthorizedAccessException">It may not be read.</exception>
    public static IReadOnlyList<string> Of(string file) => Manifest.Of(file) is { } told
        ? Sum(file) != told.Sha256 ? ["Its SHA-256 is not that of its manifest."]
            : Found(file, Connections.AtRest, told.Rows)
        : ["No manifest of it stands beside it.", .. Found(file, Connections.AtRest, rows: null)];

    /// <summary>All that is wrong with a copy that we made ourselves and that nothing lies beside; the tables' own
    /// rules are held against every row too.</summary>
    /// <param name="copy">The file; nobody writes to it.</param>
    /// <param name="rows">How many rows each table should hold; none: that is not known.</param>
    internal static IReadOnlyList<string> OfCopy(string copy, IReadOnlyDictionary<string, long>? rows) =>
        Found(copy, Connections.OwnCopy, rows);

    /// <summary>The SHA-256 of a file's bytes, in hexadecimal letters.</summary>
    public static string Sum(string file)
    {
        using var bytes = new FileStream(file, FileMode.Open, FileAccess.Read, FileShare.Read);
        return Convert.ToHexStringLower(SHA256.HashData(bytes));
    }

    /// <summary>How many rows each table holds.</summary>
    internal static IReadOnlyDictionary<string, long> Rows(SqliteConnection connection) =>
        connection.Query<string>(Tables).AsList().ToDictionary(
            table => table,
            table => connection.ExecuteScalar<long>($"select count(*) from \"{table.Replace("\"", "\"\"")}\""));

    private static bool Same(IReadOnlyDictionary<string, long> told, IReadOnlyDictionary<string, long> found) =>
        told.Count == found.Count && told.All(table => found.GetValueOrDefault(table.Key, -1) == table.Value);

    private static IReadOnlyList<string> Found(
        string file, Func<string, SqliteConnection> opened, IReadOnlyDictionary<string, long>? rows)
    {
        try
        {
            using var connection = opened(file);
            return Soundness.Of(connection) is [_, ..] found ? found
                : rows is not null && !Same(rows, Rows(connection)) ? ["Its tables hold other numbers of rows."]
                : [];
        }
        catch (SqliteException broken)
        {
            return [broken.Message];
        }
    }
}
