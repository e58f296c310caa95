using Dapper;
using Microsoft.Data.Sqlite;

namespace StudioBot.Records.Tests;

/// <summary>A file as text: its schema and every row of every table, in an order that does not depend on how they came there.</summary>
public static class Dump
{
    private const string Schema = """
        select sql
        from sqlite_schema
        where sql is not null
        order by type, name
        """;

    private const string Tables = """
        select name
        from sqlite_schema
        where type = 'table'
        order by name
        """;

    /// <summary>The whole file.</summary>
    public static List<string> Of(string path)
    {
        using var connection = Raw(path);
        return [.. Of(connection, Schema), .. Rows(connection).SelectMany(table => table.Value)];
    }

    /// <summary>The statements of its schema.</summary>
    public static List<string> SchemaOf(string path)
    {
        using var connection = Raw(path);
        return Of(connection, Schema);
    }

    /// <summary>The rows of each table, every value as SQL writes it.</summary>
    public static Dictionary<string, List<string>> RowsOf(string path)
    {
        using var connection = Raw(path);
        return Rows(connection);
    }

    /// <summary>A connection that knows nothing of our ways.</summary>
    public static SqliteConnection Raw(string path)
    {
        var connection = new SqliteConnection($"Data Source={path};Pooling=False");
        connection.Open();
        return connection;
    }

    private static Dictionary<string, List<string>> Rows(SqliteConnection connection) =>
        Of(connection, Tables).ToDictionary(table => table, table => Rows(connection, table, Columns(connection, table)));

    /// <summary>The columns of a table.</summary>
    public static List<string> Columns(SqliteConnection connection, string table) =>
        connection.Query<string>("select name from pragma_table_info($table)", new { table }).AsList();

    /// <summary>The rows of a table, in these columns only.</summary>
    public static List<string> Rows(SqliteConnection connection, string table, IEnumerable<string> columns) =>
    [
        .. connection.Query<string>(
            $"select '{table}' || {string.Join(" || ", columns.Select(column => $"' {column}=' || quote(\"{column}\")"))} from \"{table}\"")
            .Order(StringComparer.Ordinal),
    ];

    private static List<string> Of(SqliteConnection connection, string query) =>
        connection.Query<string>(query).AsList();
}
