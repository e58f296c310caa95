using System.Text.Json;
using Dapper;
using Microsoft.Data.Sqlite;
using StudioBot.Craft.Costs;
using StudioBot.Records.Materials;

namespace StudioBot.Records.Stock;

/// <summary>The lines of the stock book, read.</summary>
internal sealed class StockLines
{
    private static readonly string[] Book = ["stock_entry"];

    private readonly SqliteConnection connection;
    private readonly RecentUses recent;
    private readonly RememberedBy<(long Material, StockReason Reason), IReadOnlyList<StockLine>> heldFor;
    private readonly RememberedBy<(long Material, bool Fills), StockLine?> lastMoved;
    private readonly RememberedBy<long, DateTimeOffset?> begun;

    /// <summary>The lines in this connection's file.</summary>
    public StockLines(SqliteConnection connection)
    {
        this.connection = connection;
        recent = new RecentUses(connection);
        heldFor = new(connection, Book, asked =>
        [
            .. connection.Query<LineRow>(
                HeldFor, new { material = asked.Material, reason = StockRecords.Reasons.Of(asked.Reason) })
                .Select(row => row.From()),
        ]);
        lastMoved = new(connection, Book, asked => connection.QuerySingleOrDefault<LineRow>(
            HeldLast, new { material = asked.Material, fills = asked.Fills })?.From());
        begun = new(connection, ["lot"], material =>
            Booked.Moment(connection.ExecuteScalar<long?>(First, new { material })));
    }

    private const string Columns = """
        select entry.act_id as actId, entry.material_id as materialId, entry.lot_id as lotId, entry.microlitres,
               entry.milligrams, entry.pieces, entry.cents, entry.reason, act.author_id as authorId,
               act.for_id as forId, act.happened_at as happenedAt
        from stock_entry as entry
        join act on act.id = entry.act_id

        """;

    private const string Lines = Columns + """
        where ($material is null or entry.material_id = $material)
          and act.happened_at >= $since
        order by entry.id
        """;

    /// <summary>Those of a time and a material, undone ones and their opposites too.</summary>
    public IReadOnlyList<StockLine> Listed(DateTimeOffset? since, long? material)
    {
        var from = since is { } moment ? Booked.At(moment) : long.MinValue;
        return [.. connection.Query<LineRow>(Lines, new { material, since = from }).Select(row => row.From())];
    }

    private const string OfAct = Columns + """
        where entry.act_id = $act
        order by entry.id
        """;

    /// <summary>Those of an act.</summary>
    public IReadOnlyList<StockLine> Of(long act) =>
        [.. connection.Query<LineRow>(OfAct, new { act }).Select(row => row.From())];

    // The plus keeps a query from going through all lines that undo nothing, as nearly all do.
    private const string Held = Columns + """
        where +entry.undoes_id is null
          and not exists (select 1 from stock_entry as answer where answer.undoes_id = entry.id)
          and ($material is null or entry.material_id = $material)
          and ($lot is null or entry.lot_id = $lot)
        order by entry.id
        """;

    /// <summary>Those that hold, of a material and a lot.</summary>
    public IReadOnlyList<StockLine> Holding(long? materialId, long? lotId) =>
        [.. connection.Query<LineRow>(Held, new { material = materialId, lot = lotId }).Select(row => row.From())];

    private const string HeldFor = Columns + """
        where entry.material_id = $material
          and entry.reason = $reason
          and +entry.undoes_id is null
          and not exists (select 1 from stock_entry as answer where answer.undoes_id = entry.id)
        order by entry.id
        """;

    /// <summary>Those that hold, of a material and a reason.</summary>
    public IReadOnlyList<StockLine> HoldingFor(long materialId, StockReason reason) =>
        heldFor.Of((materialId, reason));

    private const string HeldLast = Columns + """
        where entry.material_id = $material
          and entry.reason not in ('opening', 'counted')
          and (coalesce(entry.microlitres, entry.milligrams, entry.pieces) > 0) = $fills
          and +entry.undoes_id is null
          and not exists (select 1 from stock_entry as answer where answer.undoes_id = entry.id)
        order by act.happened_at desc, entry.id desc
        limit 1
        """;

    /// <summary>What last came of a material, or went, by other ways than a count; none where nothing did.</summary>
    public StockLine? LastMoved(long materialId, bool fills) => lastMoved.Of((materialId, fills));

    private const string Reached = """
        select total(coalesce(microlitres / 1000.0, milligrams / 1000.0, pieces))
        from stock_entry
        where material_id = $material
          and act_id <= $act
          and lot_id not in (select value from json_each($apart))
        """;

    /// <summary>What the book said of a material once this act was written, in millilitres, grams or pieces.</summary>
    public double Level(long materialId, long act, IEnumerable<long> apartLots) => connection.QuerySingle<double>(
        Reached, new { material = materialId, act, apart = JsonSerializer.Serialize(apartLots) });

    private const string Moves = """
        select total(units) filter (where units > 0) as came, -total(units) filter (where units < 0) as went
        from (
            select coalesce(entry.microlitres / 1000.0, entry.milligrams / 1000.0, entry.pieces) as units
            from stock_entry as entry
            where entry.material_id = $material
              and entry.act_id > $act
              and ($withOpening or entry.reason <> 'opening')
              and entry.lot_id not in (select value from json_each($apart))
              and +entry.undoes_id is null
              and not exists (select 1 from stock_entry as answer where answer.undoes_id = entry.id))
        """;

    /// <summary>What came of a material and what went after this act, without what was undone.</summary>
    public StockMoves Moved(long materialId, long act, bool withOpening, IEnumerable<long> apartLots) =>
        connection.QuerySingle<StockMoves>(
            Moves, new { material = materialId, act, withOpening, apart = JsonSerializer.Serialize(apartLots) });

    private const string HeldOfActs = Columns + """
        where entry.act_id in (select value from json_each($acts))
          and +entry.undoes_id is null
          and not exists (select 1 from stock_entry as answer where answer.undoes_id = entry.id)
        order by entry.id
        """;

    /// <summary>Those that hold, of these acts.</summary>
    public IReadOnlyList<StockLine> HoldingOf(IEnumerable<long> acts) =>
    [
        .. connection.Query<LineRow>(HeldOfActs, new { acts = JsonSerializer.Serialize(acts) })
            .Select(row => row.From()),
    ];

    private const string HeldBetween = Columns + """
        where act.happened_at >= $from
          and act.happened_at < $until
          and +entry.undoes_id is null
          and not exists (select 1 from stock_entry as answer where answer.undoes_id = entry.id)
        order by entry.id
        """;

    /// <summary>Those that hold, of acts about this time.</summary>
    public IReadOnlyList<StockLine> HoldingBetween(DateTimeOffset from, DateTimeOffset until) =>
        [.. connection.Query<LineRow>(HeldBetween, new { from = Booked.At(from), until = Booked.At(until) })
            .Select(row => row.From())];

    private const string WrittenLater = Columns + """
        where entry.act_id in (select id from act where written_at > $moment)
          and entry.material_id = $material
        order by entry.id
        """;

    /// <summary>Those of a material that were written after this moment.</summary>
    public IReadOnlyList<StockLine> WrittenAfter(DateTimeOffset moment, long materialId) =>
    [
        .. connection.Query<LineRow>(WrittenLater, new { moment = Booked.At(moment), material = materialId })
            .Select(row => row.From()),
    ];

    private const string HeldUses = """
        select act.happened_at as at,
               -coalesce(entry.microlitres / 1000.0, entry.milligrams / 1000.0, entry.pieces) as units
        from stock_entry as entry
        join act on act.id = entry.act_id
        where entry.material_id = $material
          and entry.reason in ('used', 'mixed', 'poured', 'coated', 'returned')
          and entry.act_id >= $first
          and entry.act_id < $behind
          and act.happened_at >= $since
          and +entry.undoes_id is null
          and not exists (select 1 from stock_entry as answer where answer.undoes_id = entry.id)
        """;

    /// <summary>Those that hold by which a material was used, of acts about a time that were written in one.
    /// </summary>
    public IEnumerable<UseAt> UsesSince(
        DateTimeOffset since, long materialId, Lazy<long> firstAct, long? behindAct) => behindAct is { } behind
            ? UsesBetween(since, materialId, firstAct.Value, behind)
            : recent.Since(since, materialId, firstAct);

    private List<UseAt> UsesBetween(DateTimeOffset since, long materialId, long firstAct, long behindAct)
    {
        using var command = connection.CreateCommand();
        command.CommandText = HeldUses;
        command.Parameters.AddWithValue("$material", materialId);
        command.Parameters.AddWithValue("$first", firstAct);
        command.Parameters.AddWithValue("$behind", behindAct);
        command.Parameters.AddWithValue("$since", Booked.At(since));
        using var row = command.ExecuteReader();
        List<UseAt> uses = [];
        while (row.Read())
        {
            uses.Add(new UseAt(Booked.Moment(row.GetInt64(0)), row.GetDouble(1)));
        }

        return uses;
    }

    private const string Delivered = """
        select coalesce(sum(coalesce(entry.microlitres, entry.milligrams, entry.pieces)), 0)
        from stock_entry as entry
        join act on act.id = entry.act_id
        where entry.material_id = $material
          and entry.reason = 'bought'
          and act.written_at > $since
        """;

    /// <summary>What was booked as bought after this moment, less what was taken back, in the book's whole units.
    /// </summary>
    public long Bought(long materialId, DateTimeOffset since) =>
        connection.ExecuteScalar<long>(Delivered, new { material = materialId, since = Booked.At(since) });

    // A delivery is a lot of its own, and of those there are few.
    private const string Came = """
        select distinct act.written_at
        from lot
        cross join act on act.id = lot.act_id
        where lot.material_id = $material
          and lot.undone_id is null
          and exists (
              select 1 from stock_entry as entry
              where entry.act_id = lot.act_id and entry.lot_id = lot.id and +entry.reason = 'bought')
        order by act.written_at
        """;

    /// <summary>The moments at which it was written that a material came.</summary>
    public IReadOnlyList<DateTimeOffset> CameAt(long materialId) =>
        [.. connection.Query<long>(Came, new { material = materialId }).Select(Booked.Moment)];

    private const string First = """
        select min(act.happened_at)
        from lot
        join act on act.id = lot.act_id
        where lot.material_id = $material
          and lot.undone_id is null
        """;

    /// <summary>The moment of a material's first lot.</summary>
    public DateTimeOffset? Begun(long materialId) => begun.Of(materialId);

    private sealed record LineRow(
        long ActId,
        long MaterialId,
        long LotId,
        long? Microlitres,
        long? Milligrams,
        long? Pieces,
        long Cents,
        string Reason,
        long? AuthorId,
        long? ForId,
        long HappenedAt)
    {
        public StockLine From()
        {
            var signed = new AmountColumns(Microlitres, Milligrams, Pieces);
            return new StockLine(
                ActId,
                MaterialId,
                LotId,
                signed.Magnitude().Known(),
                signed.Whole > 0,
                StockRecords.Reasons.Read(Reason),
                ForId ?? AuthorId,
                Booked.Moment(HappenedAt))
            {
                Worth = new Money(Math.Abs(Cents)),
            };
        }
    }
}
