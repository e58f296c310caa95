using Dapper;
using Microsoft.Data.Sqlite;
using StudioBot.Craft.Costs;
using StudioBot.Records.Acts;
using StudioBot.Records.Materials;

namespace StudioBot.Records.Stock;

/// <summary>What each member got or bore by the counts of a material; what was undone is not among it.</summary>
public sealed class CountRecords
{
    /// <summary>Lines that hold and that a count booked: the one that asks, or one whose shares are kept.</summary>
    internal const string Holding = """
        holding as (
            select entry.id, entry.act_id, entry.lot_id, entry.cents, entry.reason,
                   coalesce(entry.microlitres, entry.milligrams, entry.pieces) as units,
                   entry.reason = 'counted' and (entry.act_id = $act or exists (
                       select 1
                       from count_share as share
                       where share.act_id = entry.act_id and share.material_id = $material)) as is_count
            from stock_entry as entry
            where entry.material_id = $material
              and entry.undoes_id is null
              and not exists (select 1 from stock_entry as answer where answer.undoes_id = entry.id)),
        run as (
            select id, act_id, lot_id, cents, units
            from holding
            where is_count
              and id > coalesce((select max(id) from holding where not is_count), 0))
        """;

    private readonly SqliteConnection connection;

    internal CountRecords(SqliteConnection connection) => this.connection = connection;

    // What fills goes before what draws, so that no lot is short on the way.
    private const string Opposite = "with " + Holding + """

        insert into stock_entry (act_id, material_id, lot_id, microlitres, milligrams, pieces, cents, reason)
        select $act, $material, lot_id,
               iif($column = 1, -sum(units), null), iif($column = 2, -sum(units), null),
               iif($column = 3, -sum(units), null), -sum(cents), 'counted'
        from run
        group by lot_id
        having sum(units) <> 0
        order by sum(units)
        """;

    /// <summary>The lots come to stand as they did before the run that this count is in.</summary>
    internal void TakeBackRun(long materialId, AmountColumns like, Act count)
    {
        var column = like.Microlitres is not null ? 1 : like.Milligrams is not null ? 2 : 3;
        connection.Execute(Opposite, new { act = count.Id, material = materialId, column });
    }

    private const string Standing = "with " + Holding + """

        select coalesce(min(act_id), $act) as runId, coalesce(sum(cents), 0) as cents
        from run
        """;

    /// <summary>The run that this count is the last of.</summary>
    /// <returns>The act of its first count, and what all of them found over the book.</returns>
    public (long Run, Money Worth) RunOf(long materialId, Act count)
    {
        var row = connection.QuerySingle<StandingRow>(Standing, new { material = materialId, act = count.Id });
        return (row.RunId, new Money(row.Cents));
    }

    private const string Before = """
        select share.run_id as runId, share.member_id as memberId, share.cents, act.happened_at as happenedAt
        from count_share as share
        join act on act.id = share.act_id
        where share.material_id = $material
          and share.act_id = (
            select max(later.act_id)
            from count_share as later
            where later.material_id = $material
              and later.run_id = share.run_id
              and not exists (select 1 from act as answer where answer.undoes_id = later.act_id))
        order by share.run_id, share.member_id
        """;

    /// <summary>The runs of a material's counts, the oldest first.</summary>
    public IReadOnlyList<CountRun> Runs(long materialId) =>
    [
        .. connection.Query<ShareRow>(Before, new { material = materialId })
            .GroupBy(row => row.RunId)
            .Select(run => new CountRun(
                run.Key,
                Booked.Moment(run.First().HappenedAt),
                run.ToDictionary(row => row.MemberId, row => new Money(row.Cents)))),
    ];

    private const string NewShare = """
        insert into count_share (act_id, run_id, material_id, member_id, cents)
        values ($act, $run, $material, $member, $cents)
        """;

    /// <summary>Keeps how a run stands after this count of it.</summary>
    /// <exception cref="SqliteException">It was kept before.</exception>
    public void Keep(long materialId, CountRun run, Act count) =>
        connection.Execute(NewShare, run.Shares.Select(share => new
        {
            act = count.Id,
            run = run.Id,
            material = materialId,
            member = share.Key,
            cents = share.Value.Cents,
        }));

    private sealed record StandingRow
    {
        public long RunId { get; init; }

        public long Cents { get; init; }
    }

    private sealed record ShareRow(long RunId, long MemberId, long Cents, long HappenedAt);
}
