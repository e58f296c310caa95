using Dapper;
using Microsoft.Data.Sqlite;
using StudioBot.Records.Acts;

namespace StudioBot.Records.Stock;

/// <summary>Who used how much, as weights for what all of them bear; what was undone is not among it.</summary>
internal sealed class MemberUses(SqliteConnection connection)
{
    private const string SinceCounted = "with " + CountRecords.Holding + """

        select coalesce(act.for_id, act.author_id) as memberId, -sum(entry.units) as used,
               -coalesce(sum(entry.cents) filter (where entry.reason <> 'mixed'), 0) as cents
        from holding as entry
        join act on act.id = entry.act_id
        where entry.reason in ('used', 'mixed', 'poured', 'coated', 'returned')
          and entry.id > coalesce((
            select max(id)
            from holding
            where is_count and id < (select max(id) from holding where not is_count)), 0)
          and coalesce(act.for_id, act.author_id) is not null
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

    /// <summary>Of one material between the run of counts that this act is in, or begins, and the one before.</summary>
    public IReadOnlyDictionary<long, MemberUse> SinceCount(long material, Act act) =>
        connection.Query<Row>(SinceCounted, new { material, act = act.Id })
            .ToDictionary(row => row.MemberId, row => new MemberUse(row.Used, row.Cents));

    /// <summary>Of all materials, in cents.</summary>
    public IReadOnlyDictionary<long, long> WorthBetween(DateTimeOffset from, DateTimeOffset until) =>
        connection.Query<Row>(Worth, new { from = Booked.At(from), until = Booked.At(until) })
            .ToDictionary(row => row.MemberId, row => row.Used);

    // Settable, not positional: a sum has no declared type for a constructor to be matched by.
    private sealed record Row
    {
        public long MemberId { get; init; }

        public long Used { get; init; }

        public long Cents { get; init; }
    }
}
