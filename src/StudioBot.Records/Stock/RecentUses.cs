using Dapper;
using Microsoft.Data.Sqlite;

namespace StudioBot.Records.Stock;

/// <summary>How materials were used lately: the lines of one are read once, and from then on only those that came
/// since, of all at once.</summary>
/// <remarks>The book is only appended. What was taken back with its session is forgotten with all else.</remarks>
internal sealed class RecentUses(SqliteConnection connection)
{
    // Who asks from a little later is given the same lines, who asks from a little earlier has them read anew.
    private static readonly TimeSpan Slack = TimeSpan.FromDays(28);

    private static readonly string[] Book = ["stock_entry"];

    private readonly Dictionary<long, Known> known = [];
    private long last;
    private long asOf;
    private long takenBack;

    private const string OfOne = """
        select entry.id, act.happened_at,
               -coalesce(entry.microlitres / 1000.0, entry.milligrams / 1000.0, entry.pieces)
        from stock_entry as entry
        join act on act.id = entry.act_id
        where entry.material_id = $material
          and entry.reason in ('used', 'mixed', 'poured', 'coated', 'returned')
          and entry.act_id >= $first
          and entry.id <= $last
          and act.happened_at >= $since
          and +entry.undoes_id is null
          and not exists (select 1 from stock_entry as answer where answer.undoes_id = entry.id)
        """;

    private const string SinceThen = """
        select entry.id, entry.material_id, entry.undoes_id, act.happened_at,
               -coalesce(entry.microlitres / 1000.0, entry.milligrams / 1000.0, entry.pieces)
        from stock_entry as entry
        join act on act.id = entry.act_id
        where entry.id > $last
          and +entry.reason in ('used', 'mixed', 'poured', 'coated', 'returned')
        order by entry.id
        """;

    private const string End = """
        select coalesce(max(id), 0)
        from stock_entry
        """;

    /// <summary>How a material was used since a moment, to be looked at before anything else is read.</summary>
    /// <param name="since">From this moment.</param>
    /// <param name="material">Of which.</param>
    /// <param name="firstAct">The first act that was written since; asked for only where lines are to be read.</param>
    public IEnumerable<UseAt> Since(DateTimeOffset since, long material, Lazy<long> firstAct)
    {
        Follow();
        if (!known.TryGetValue(material, out var one) || since < one.Since || since - one.Since > Slack)
        {
            known[material] = one = ReadOf(material, since, firstAct.Value);
        }

        return one.Uses.Values.Where(use => use.At >= since);
    }

    private void Follow()
    {
        var (changes, back) = connection is StudioConnection own ? (own.ChangesOf(Book), own.TakenBack) : (0, 0);
        if (takenBack != back || connection is not StudioConnection)
        {
            known.Clear();
        }

        if (known.Count == 0)
        {
            last = connection.ExecuteScalar<long>(End);
        }
        else if (changes != asOf)
        {
            ReadOn();
        }

        (asOf, takenBack) = (changes, back);
    }

    private Known ReadOf(long material, DateTimeOffset since, long first)
    {
        using var command = connection.CreateCommand();
        command.CommandText = OfOne;
        command.Parameters.AddWithValue("$material", material);
        command.Parameters.AddWithValue("$first", first);
        command.Parameters.AddWithValue("$last", last);
        command.Parameters.AddWithValue("$since", Booked.At(since));
        using var row = command.ExecuteReader();
        Dictionary<long, UseAt> uses = [];
        while (row.Read())
        {
            uses.Add(row.GetInt64(0), new UseAt(Booked.Moment(row.GetInt64(1)), row.GetDouble(2)));
        }

        return new Known(since, uses);
    }

    private void ReadOn()
    {
        using var command = connection.CreateCommand();
        command.CommandText = SinceThen;
        command.Parameters.AddWithValue("$last", last);
        using var row = command.ExecuteReader();
        while (row.Read())
        {
            last = row.GetInt64(0);
            if (!known.TryGetValue(row.GetInt64(1), out var one))
            {
                continue;
            }

            if (!row.IsDBNull(2))
            {
                one.Uses.Remove(row.GetInt64(2));
            }
            else if (Booked.Moment(row.GetInt64(3)) is var at && at >= one.Since)
            {
                one.Uses[last] = new UseAt(at, row.GetDouble(4));
            }
        }
    }

    // Of one material since a moment, by the number of the line.
    private sealed record Known(DateTimeOffset Since, Dictionary<long, UseAt> Uses);
}
