using System.Text.Json;

namespace StudioBot.Records.Acts;

/// <summary>Rows of a table that is no book, as they stood under one key at one moment, and as text.</summary>
internal sealed class KeptRow(IReadOnlyList<IReadOnlyDictionary<string, JsonElement>> rows)
{
    /// <summary>In the order of their table; empty where there was no row.</summary>
    public IReadOnlyList<IReadOnlyDictionary<string, JsonElement>> Rows { get; } = rows;

    /// <summary>What came of a query, column by column.</summary>
    public static KeptRow Of(IEnumerable<IDictionary<string, object?>> rows) =>
        Read(JsonSerializer.Serialize(rows));

    /// <summary>From the text in the file.</summary>
    public static KeptRow Read(string? text) =>
        new(text is null ? [] : JsonSerializer.Deserialize<List<Dictionary<string, JsonElement>>>(text) ?? []);

    /// <summary>As it stands in the file; none where there was no row.</summary>
    public string? Text => Rows.Count == 0 ? null : JsonSerializer.Serialize(Rows);

    /// <summary>The columns of a single row that differ between the two.</summary>
    public static IReadOnlyList<string> Changed(KeptRow before, KeptRow after) =>
        [.. before.Rows[0].Keys.Where(column => !Same(before.Rows[0][column], after.Rows[0][column]))];

    /// <summary>Whether these columns of a single row stand as they stood then.</summary>
    public bool Agrees(KeptRow then, IEnumerable<string> columns) =>
        Rows.Count == 1 && columns.All(column => Same(Rows[0][column], then.Rows[0][column]));

    /// <summary>A column's value as the database takes it.</summary>
    public static object? Value(JsonElement column) => column.ValueKind switch
    {
        JsonValueKind.Null => null,
        JsonValueKind.String => column.GetString(),
        _ => column.TryGetInt64(out var whole) ? whole : column.GetDouble(),
    };

    private static bool Same(JsonElement one, JsonElement other) => one.GetRawText() == other.GetRawText();
}
