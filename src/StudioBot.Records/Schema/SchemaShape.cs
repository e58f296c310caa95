using System.Security.Cryptography;
using System.Text;
using Dapper;
using Microsoft.Data.Sqlite;

namespace StudioBot.Records.Schema;

/// <summary>The text of a file's whole schema as one hash: what stands in it beside the steps shows, be it a trigger
/// or a view.</summary>
internal static class SchemaShape
{
    // Version 1 first; made once, from the steps themselves.
    private static readonly Lazy<IReadOnlyList<string>> Known = new(() => [.. ByTheSteps()]);

    private const string Everything = """
        select type || char(10) || name || char(10) || tbl_name || char(10) || coalesce(sql, '')
        from sqlite_schema
        order by type, name
        """;

    /// <summary>The hash of this file's schema.</summary>
    public static string Of(SqliteConnection connection) => Convert.ToHexStringLower(SHA256.HashData(
        Encoding.UTF8.GetBytes(string.Join('\0', connection.Query<string>(Everything)))));

    /// <summary>The hash that a file of this version has.</summary>
    /// <param name="version">From 1 to the newest.</param>
    public static string Of(int version) => Known.Value[version - 1];

    private static IEnumerable<string> ByTheSteps()
    {
        using var empty = new SqliteConnection("Data Source=:memory:");
        empty.Open();
        for (var version = 1; version <= SchemaSteps.Newest; version++)
        {
            SchemaSteps.Apply(empty, version);
            yield return Of(empty);
        }
    }
}
