using Dapper;
using Microsoft.Data.Sqlite;
using StudioBot.Records.Acts;

namespace StudioBot.Records.Stock;

/// <summary>Who used how much, as weights for what all of them bear; what was undone is not among it.</summary>
internal sealed class MemberUses(SqliteConnection connection)
{
    private const string SinceCounted = """
        select coalesce(act.for_id, act.author_id) as memberId,
               -sum(coalesce(entry.microlitres, entry.milligrams, entry.pieces)) as used
        from stock_entry as entry
        join act on act.id = entry.act_id
        where entry.material_id = $material
          and entry.reason in ('used', 'mixed', 'poured', 'coated', 'returned')
          and entry.id > coalesce((
            select max(id)
            from stock_entry
            where material_id = $material and reason = 'counted' and act_id <> $act), 0)
          and coalesce(act.for_id, act.author_id) is not null
          and +entry.undoes_id is null
          and not exists (select 1 from stock_entry as answer where answer.undoes_id = entry.id)
        group by coalesce(act.for_id, act.author_id)
        """;

    private const string Worth = """
        select coalesce(act.for_id, act.author_id) as memberId, -sum(entry.cents) as used
        from act
        join stock_entry as entry on entry.act_id = act.id
        where act.happened_at >= $from
          and act.happened_at <= $until
          and entry.reason in ('used', 'poured', 'coated', 'returned')
          and coalesce(act.for_id, act.author_id) is not null
          and +entry.undoes_id is null
          and not exists (select 1 from stock_entry as answer where answer.undoes_id = entry.id)
        group by coalesce(act.for_id, act.author_id)
        """;

    /// <summary>Of one material since the last count before this act, in the book's whole units.</summary>
    public IReadOnlyDictionary<long, long> SinceCount(long material, Act act) =>
        Read(SinceCounted, new { material, act = act.Id });

    /// <summary>Of all materials, in cents.</summary>
    public IReadOnlyDictionary<long, long> WorthBetween(DateTimeOffset from, DateTimeOffset until) =>
        Read(Worth, new { from = Booked.At(from), until = Booked.At(until) });

    private Dictionary<long, long> Read(string query, object parameters) =>
        connection.Query<Row>(query, parameters).ToDictionary(row => row.MemberId, row => row.Used);

    // Settable, not positional: a sum has no declared type for a constructor to be matched by.
    private sealed record Row
    {
        public long MemberId { get; init; }

        public long Used { get; init; }
    }
}
