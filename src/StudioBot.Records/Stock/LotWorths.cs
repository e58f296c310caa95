using Dapper;
using Microsoft.Data.Sqlite;
using StudioBot.Records.Acts;

namespace StudioBot.Records.Stock;

/// <summary>What an amount is worth in whole cents, by what its lot had cost.</summary>
internal sealed class LotWorths(SqliteConnection connection)
{
    private const string PartsDrawn = """
        select coalesce(-sum(cents), 0)
        from stock_entry
        where act_id = $act
          and reason in ('mixed', 'made')
        """;

    private const string Rate = """
        select coalesce(held.cents, (
                   select sum(cents)
                   from stock_entry
                   where lot_id = $lot and cents > 0 and reason <> 'counted'), 0) as cents,
               coalesce(held.units, (
                   select sum(coalesce(microlitres, milligrams, pieces))
                   from stock_entry
                   where lot_id = $lot
                     and coalesce(microlitres, milligrams, pieces) > 0
                     and reason <> 'counted'), 0) as units
        from (select $lot as id) as asked
        left join lot_sum as held on held.lot_id = asked.id and held.units > 0
        """;

    /// <summary>So many units of a whole that is worth so much, half up: all of the whole is all of its cents.
    /// </summary>
    public static long Part(long cents, long units, long whole) => checked((2 * cents * units + whole) / (2 * whole));

    /// <summary>A mixture is worth what this act drew for it.</summary>
    public long OfParts(Act act) => connection.ExecuteScalar<long>(PartsDrawn, new { act = act.Id });

    /// <summary>So many units at the rate of what is left of a lot; of an empty one, of all that came into it.
    /// </summary>
    public long AtRateOf(long lot, long units)
    {
        var rate = connection.QuerySingle<RateRow>(Rate, new { lot });
        return rate.Units > 0 ? Part(rate.Cents, units, rate.Units) : 0;
    }

    // Settable, not positional: sums have no declared type for a constructor to be matched by.
    private sealed record RateRow
    {
        public long Cents { get; init; }

        public long Units { get; init; }
    }
}
