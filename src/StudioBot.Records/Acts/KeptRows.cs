using System.Globalization;
using System.Text.Json;
using Dapper;
using Microsoft.Data.Sqlite;

namespace StudioBot.Records.Acts;

/// <summary>Keeps rows that are no book in the act that changes them, and puts them back.</summary>
internal sealed class KeptRows(SqliteConnection connection)
{
    private const int Constraint = 19;   // SQLITE_CONSTRAINT

    private const string Keep = """
        insert into setting_change (act_id, table_name, row_key, row_before, row_after)
        values ($act, $table, $key, $before, $after)
        """;

    /// <summary>Does this, which touches this table only under this key, and keeps what was there before; without an
    /// act, as when a studio is founded, nothing is kept.</summary>
    public void Change(Act? act, KeptTable table, long key, Action change) =>
        Change(act, table, key.ToString(CultureInfo.InvariantCulture), change);

    /// <inheritdoc cref="Change(Act?, KeptTable, long, Action)"/>
    public void Change(Act? act, KeptTable table, string key, Action change)
    {
        var before = Stands(table, key).Text;
        change();
        Touch(table);
        var after = Stands(table, key).Text;
        if (act is not null && before != after)
        {
            connection.Execute(Keep, new { act = act.Id, table = table.Name, key, before, after });
        }
    }

    /// <summary>Keeps that these rows, if there are any, were not there before this act.</summary>
    public void Added(Act? act, KeptTable table, long key)
    {
        var row = key.ToString(CultureInfo.InvariantCulture);
        if (act is not null && Stands(table, row).Text is { } after)
        {
            string? before = null;
            connection.Execute(Keep, new { act = act.Id, table = table.Name, key = row, before, after });
        }
    }

    private const string Kept = """
        select table_name as tableName, row_key as rowKey, row_before as rowBefore, row_after as rowAfter
        from setting_change
        where act_id = $act
        order by id desc
        """;

    /// <summary>Puts back what this act changed, the last change first.</summary>
    /// <returns>What stands in the way, after which the caller rolls back; none where all went back.</returns>
    public Obstacle? Restore(long act)
    {
        foreach (var row in connection.Query<Row>(Kept, new { act }).AsList())
        {
            if (Restore(act, row) is { } obstacle)
            {
                return obstacle;
            }
        }

        return null;
    }

    private Obstacle? Restore(long act, Row row)
    {
        var table = KeptTable.Named(row.TableName);
        var (before, after, now) = (KeptRow.Read(row.RowBefore), KeptRow.Read(row.RowAfter), Stands(table, row.RowKey));
        if (!table.IsSet && before.Rows.Count == 1 && after.Rows.Count == 1)
        {
            var columns = KeptRow.Changed(before, after);
            return Later(act, row, columns) is var later && later.Count == 0 && now.Agrees(after, columns)
                ? Tried(row, () => PutBack(table, row.RowKey, before, columns))
                : new Obstacle(later);
        }

        return Later(act, row, null) is var others && others.Count == 0 && now.Text == after.Text
            ? Tried(row, () => Replace(table, row.RowKey, before))
            : new Obstacle(others);
    }

    // What the file's own references and unique columns forbid, somebody rests on.
    private Obstacle? Tried(Row row, Action change)
    {
        try
        {
            change();
            Touch(KeptTable.Named(row.TableName));
            return null;
        }
        catch (SqliteException refused) when (refused.SqliteErrorCode == Constraint)
        {
            return new Obstacle([.. Mentions(row)]);
        }
    }

    private const string LaterChanges = """
        select change.act_id as actId, change.row_before as rowBefore, change.row_after as rowAfter
        from setting_change as change
        join act on act.id = change.act_id
        where change.table_name = $table
          and change.row_key = $key
          and change.act_id > $act
          and act.undoes_id is null
          and not exists (select 1 from act as answer where answer.undoes_id = act.id)
        order by change.id
        """;

    private List<long> Later(long act, Row row, IReadOnlyList<string>? columns) =>
        [.. connection.Query<LaterRow>(LaterChanges, new { act, table = row.TableName, key = row.RowKey })
            .Where(later => columns is null || later.Touches(columns))
            .Select(later => later.ActId)];

    // Some of these tables have no row numbers.
    private void Touch(KeptTable table) => (connection as StudioConnection)?.CountChange(table.Name);

    // The acts in which books, which are never shortened, mention this row.
    private const string Mentioning = """
        select id
        from act
        where undoes_id is null
          and not exists (select 1 from act as answer where answer.undoes_id = act.id)
          and id in (
            select act_id from stock_entry where $table = 'material' and material_id = $key
            union select act_id from batch where $table = 'recipe' and recipe_id = $key
            union select act_id from piece where $table = 'recipe' and recipe_id = $key
            union select act_id from piece_event where $table = 'shelf' and shelf_id = $key
            union select act_id from air_reading where $table = 'room' and room_id = $key
            union select id from act where $table = 'member' and (author_id = $key or for_id = $key))
        """;

    private IEnumerable<long> Mentions(Row row) =>
        connection.Query<long>(Mentioning, new { table = row.TableName, key = row.RowKey });

    // Table and column names are our own: the table's from the closed list, the columns' from the file's schema.
    private KeptRow Stands(KeptTable table, string key) => KeptRow.Of(connection
        .Query($"select * from {table.Name} where {table.Key} = $key order by 1, 2", new { key })
        .Cast<IDictionary<string, object?>>());

    private void PutBack(KeptTable table, string key, KeptRow before, IReadOnlyList<string> columns)
    {
        if (columns.Count == 0)
        {
            return;   // the change was a name, and its bearer is forgotten
        }

        var values = Values(before.Rows[0], columns);
        values.Add("rowKey", key);
        var set = string.Join(", ", columns.Select(column => $"{column} = ${column}"));
        connection.Execute($"update {table.Name} set {set} where {table.Key} = $rowKey", values);
    }

    private void Replace(KeptTable table, string key, KeptRow before)
    {
        connection.Execute($"delete from {table.Name} where {table.Key} = $key", new { key });
        foreach (var row in before.Rows)
        {
            string[] columns = [.. row.Keys];
            var names = string.Join(", ", columns);
            var values = string.Join(", ", columns.Select(column => "$" + column));
            connection.Execute($"insert into {table.Name} ({names}) values ({values})", Values(row, columns));
        }
    }

    private static DynamicParameters Values(
        IReadOnlyDictionary<string, JsonElement> row, IReadOnlyList<string> columns)
    {
        var values = new DynamicParameters();
        foreach (var column in columns)
        {
            values.Add(column, KeptRow.Value(row[column]));
        }

        return values;
    }

    /// <summary>Somebody rests on what was to go back.</summary>
    public sealed record Obstacle(IReadOnlyList<long> Acts);

    private sealed record Row(string TableName, string RowKey, string? RowBefore, string? RowAfter);

    private sealed record LaterRow(long ActId, string? RowBefore, string? RowAfter)
    {
        public bool Touches(IReadOnlyList<string> columns)
        {
            var (before, after) = (KeptRow.Read(RowBefore), KeptRow.Read(RowAfter));
            return before.Rows.Count != 1 || after.Rows.Count != 1
                || KeptRow.Changed(before, after).Intersect(columns).Any();
        }
    }
}
