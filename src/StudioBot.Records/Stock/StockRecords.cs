using Dapper;
using Microsoft.Data.Sqlite;
using StudioBot.Craft.Costs;
using StudioBot.Craft.Stock;
using StudioBot.Records.Acts;
using StudioBot.Records.Materials;

namespace StudioBot.Records.Stock;

/// <summary>What comes into the stock and what leaves it: a book that is only appended.</summary>
public sealed class StockRecords
{
    internal static readonly StoredWords<StockReason> Reasons = new(
        (StockReason.Opening, "opening"),
        (StockReason.Bought, "bought"),
        (StockReason.Made, "made"),
        (StockReason.Used, "used"),
        (StockReason.Mixed, "mixed"),
        (StockReason.Poured, "poured"),
        (StockReason.Coated, "coated"),
        (StockReason.Counted, "counted"),
        (StockReason.Binned, "binned"),
        (StockReason.Returned, "returned"));

    private readonly SqliteConnection connection;
    private readonly KeptRows kept;
    private readonly LotWorths worths;
    private readonly MemberUses uses;
    private readonly CountRecords counts;

    internal StockRecords(SqliteConnection connection)
    {
        this.connection = connection;
        kept = new KeptRows(connection);
        worths = new LotWorths(connection);
        uses = new MemberUses(connection);
        counts = new CountRecords(connection);
    }

    private const string OpenLots = """
        select lot.id, lot.label, stop.lot_id is not null as isStopped, held.units as "left", held.cents
        from lot
        join lot_sum as held on held.lot_id = lot.id
        left join lot_stop as stop on stop.lot_id = lot.id
        where held.material_id = $material
          and (held.units > 0 or lot.id = $lot or $lot is null and lot.id = (
            select id
            from lot
            where material_id = $material and undone_id is null
            order by bought_at desc, id desc
            limit 1))
          and lot.undone_id is null
          and ($lot is null or lot.id = $lot)
        order by lot.bought_at, lot.id
        """;

    /// <summary>Draws from the oldest lot first and never from a stopped one; all of it or nothing.</summary>
    /// <exception cref="ArgumentException">The amount is not measured as the material's form is.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The amount is zero.</exception>
    public Drawn Draw(Material material, Amount amount, StockReason reason, Act act) =>
        Draw(material, amount, Lots(material.Id), reason, act);

    /// <summary>Draws from this lot only, stopped or not: what was done is booked; all of it or nothing.</summary>
    /// <inheritdoc cref="Draw(Material, Amount, StockReason, Act)"/>
    public Drawn DrawFrom(Lot lot, Material material, Amount amount, StockReason reason, Act act)
    {
        if (lot.MaterialId != material.Id)
        {
            throw new ArgumentException($"Lot {lot.Id} is not of {material.Name}.", nameof(lot));
        }

        return Draw(material, amount, [.. Lots(material.Id, lot.Id).Select(AsOpen)], reason, act);
    }

    private const string NewLotRow = """
        insert into lot (
            material_id, label, bought_at, price_cents, bought_microlitres, bought_milligrams, bought_pieces, opened_at,
            act_id)
        values ($material, $label, $at, $price, $microlitres, $milligrams, $pieces, $opened, $act)
        returning id
        """;

    /// <summary>A lot comes into the stock.</summary>
    /// <returns>The studio's own number for it.</returns>
    /// <exception cref="ArgumentException">An amount is not measured as the material's form is.</exception>
    /// <exception cref="SqliteException">The material already has a lot of this label, or nothing came.</exception>
    public long Enter(NewLot lot, StockReason reason, Act act)
    {
        Measure.Check(lot.Material.Form, lot.Bought, lot.Left);
        var (microlitres, milligrams, pieces) = AmountColumns.Of(lot.Bought);
        var id = connection.ExecuteScalar<long>(NewLotRow, new
        {
            material = lot.Material.Id,
            label = lot.Label,
            at = Booked.At(lot.At),
            price = lot.Price?.Cents,
            microlitres,
            milligrams,
            pieces,
            opened = lot.OpenedAt is { } opened ? Booked.At(opened) : (long?)null,
            act = act.Id,
        });
        if (AmountColumns.Of(lot.Left ?? lot.Bought) is { Whole: > 0 } columns)
        {
            var worth = reason == StockReason.Made
                ? worths.OfParts(act)
                : lot.Worth?.Cents
                    ?? LotWorths.Part(lot.Price?.Cents ?? 0, columns.Whole, AmountColumns.Of(lot.Bought).Whole);
            Book(lot.Material.Id, id, columns, worth, reason, act);
        }

        if (lot.Stopped is { } stop)
        {
            Stop(id, stop, act);
        }

        return id;
    }

    /// <summary>More comes into a lot that is here: thinner into a batch, what was left in a cup.</summary>
    /// <exception cref="ArgumentException">The amount is not measured as the material's form is.</exception>
    /// <exception cref="SqliteException">The amount is zero.</exception>
    public void AddTo(long lotId, Material material, Amount amount, StockReason reason, Act act)
    {
        Measure.Check(material.Form, amount);
        var columns = AmountColumns.Of(amount);
        var worth = reason == StockReason.Made ? worths.OfParts(act) : worths.AtRateOf(lotId, columns.Whole);
        Book(material.Id, lotId, columns, worth, reason, act);
    }

    /// <summary>Somebody counted: the book takes the level that was found.</summary>
    /// <remarks>What is missing leaves the oldest lots, those in use before stopped ones; what is over goes into the
    /// newest lot, at what that one is worth, or into an unlabelled one where there is none. A count that nothing but
    /// counts came before is booked in place of those: the lots come to stand as if it had been the first.</remarks>
    /// <exception cref="ArgumentException">The amount is not measured as the material's form is.</exception>
    public Stocktake Count(Material material, Amount counted, Act act)
    {
        Measure.Check(material.Form, counted);
        var found = AmountColumns.Of(counted);
        var before = AmountColumns.Like(counted, Lots(material.Id).Sum(lot => lot.Open.Left));
        if (found != before)
        {
            counts.TakeBackRun(material.Id, found, act);
        }

        var lots = Lots(material.Id);
        var over = found.Whole - lots.Sum(lot => lot.Open.Left);
        if (over < 0)
        {
            IReadOnlyList<LotInBook> all = [.. lots.OrderBy(lot => lot.Open.IsStopped).Select(AsOpen)];
            Draw(material, AmountColumns.Like(counted, -over).Known(), all, StockReason.Counted, act);
        }
        else if (over > 0)
        {
            Find(material, AmountColumns.Like(counted, over), lots, act);
        }

        return new Stocktake(before.Known(), counted);
    }

    private const string StopOne = """
        insert into lot_stop (lot_id, why, stopped_at)
        values ($lot, $why, $at)
        on conflict (lot_id) do update
        set why = $why, stopped_at = $at
        """;

    /// <summary>From now on nothing is drawn from this lot unless it is named.</summary>
    public void Stop(long lotId, string? why, Act act) => Stop(lotId, new LotStop(act.HappenedAt, why), act);

    private void Stop(long lotId, LotStop stop, Act act) => kept.Change(act, KeptTable.LotStop, lotId, () =>
        connection.Execute(StopOne, new { lot = lotId, why = stop.Why, at = Booked.At(stop.At) }));

    private const string OpenOne = """
        update lot
        set opened_at = $at
        where id = $lot
        """;

    /// <summary>This lot was opened: its shelf life runs.</summary>
    public void Opened(long lotId, Act act) => kept.Change(act, KeptTable.Lot, lotId, () =>
        connection.Execute(OpenOne, new { lot = lotId, at = Booked.At(act.HappenedAt) }));

    private const string Columns = """
        select entry.act_id as actId, entry.material_id as materialId, entry.lot_id as lotId, entry.microlitres,
               entry.milligrams, entry.pieces, entry.cents, entry.reason, act.author_id as authorId,
               act.for_id as forId, act.happened_at as happenedAt
        from stock_entry as entry
        join act on act.id = entry.act_id

        """;

    private const string Lines = Columns + """
        where ($material is null or entry.material_id = $material)
          and ($act is null or entry.act_id = $act)
          and act.happened_at >= $since
        order by entry.id
        """;

    /// <summary>The lines of the book, in the order they were booked; an undone line is followed by its opposite.
    /// </summary>
    /// <param name="since">The moment from which the acts are about; none: from the beginning.</param>
    /// <param name="materialId">Of this material only; none: of all.</param>
    public IReadOnlyList<StockLine> Entries(DateTimeOffset? since = null, long? materialId = null) =>
        Listed(since, materialId, null);

    private const string Held = Columns + """
        where entry.undoes_id is null
          and not exists (select 1 from stock_entry as answer where answer.undoes_id = entry.id)
          and ($material is null or entry.material_id = $material)
          and ($lot is null or entry.lot_id = $lot)
        order by entry.id
        """;

    /// <summary>The lines of the book that hold, in the order they were booked: what was undone is not among them.
    /// </summary>
    /// <param name="materialId">Of this material only; none: of all.</param>
    /// <param name="lotId">Of this lot only; none: of all.</param>
    public IReadOnlyList<StockLine> Holding(long? materialId = null, long? lotId = null) =>
        [.. connection.Query<LineRow>(Held, new { material = materialId, lot = lotId }).Select(row => row.From())];

    private const string HeldBetween = Columns + """
        where act.happened_at >= $from
          and act.happened_at < $until
          and entry.undoes_id is null
          and not exists (select 1 from stock_entry as answer where answer.undoes_id = entry.id)
        order by entry.id
        """;

    /// <summary>The lines that hold of acts about this time, in the order they were booked.</summary>
    /// <param name="from">From this moment.</param>
    /// <param name="until">Until before this one.</param>
    public IReadOnlyList<StockLine> HoldingBetween(DateTimeOffset from, DateTimeOffset until) =>
        [.. connection.Query<LineRow>(HeldBetween, new { from = Booked.At(from), until = Booked.At(until) })
            .Select(row => row.From())];

    private const string WrittenLater = Columns + """
        where entry.act_id in (select id from act where written_at > $moment)
          and entry.material_id = $material
        order by entry.id
        """;

    /// <summary>The lines of a material that were written after this moment, undone ones and their opposites too.
    /// </summary>
    public IReadOnlyList<StockLine> WrittenAfter(DateTimeOffset moment, long materialId) =>
    [
        .. connection.Query<LineRow>(WrittenLater, new { moment = Booked.At(moment), material = materialId })
            .Select(row => row.From()),
    ];

    private const string FirstOfEach = """
        select lot.material_id as materialId, min(act.happened_at) as happenedAt
        from lot
        join act on act.id = lot.act_id
        where lot.undone_id is null
        group by lot.material_id
        """;

    /// <summary>Since when each material is in the book; those of which nothing ever came are missing.</summary>
    public IReadOnlyDictionary<long, DateTimeOffset> Begun() => connection.Query<FirstRow>(FirstOfEach)
        .ToDictionary(row => row.MaterialId, row => Booked.Moment(row.HappenedAt));

    /// <summary>What each member used of a material between this run of counts and the one before.</summary>
    public IReadOnlyDictionary<long, MemberUse> UsedSinceCount(long materialId, Act act) =>
        uses.SinceCount(materialId, act);

    /// <summary>What each member used of all materials in a time, in cents.</summary>
    public IReadOnlyDictionary<long, long> WorthUsedBetween(DateTimeOffset from, DateTimeOffset until) =>
        uses.WorthBetween(from, until);

    private const string MovedOnes = """
        select distinct material_id
        from stock_entry
        where act_id = $act
        """;

    /// <summary>The materials whose level an act moved.</summary>
    public IReadOnlyList<long> MovedBy(Act act) => [.. connection.Query<long>(MovedOnes, new { act = act.Id })];

    /// <summary>The lines of one act.</summary>
    public IReadOnlyList<StockLine> Of(Act act) => Listed(null, null, act.Id);

    private IReadOnlyList<StockLine> Listed(DateTimeOffset? since, long? material, long? act)
    {
        var from = since is { } moment ? Booked.At(moment) : long.MinValue;
        return [.. connection.Query<LineRow>(Lines, new { material, act, since = from }).Select(row => row.From())];
    }

    private Drawn Draw(
        Material material, Amount amount, IReadOnlyList<LotInBook> lots, StockReason reason, Act act)
    {
        Measure.Check(material.Form, amount);
        return Craft.Stock.Draw.From([.. lots.Select(lot => lot.Open)], AmountColumns.Of(amount).Whole) switch
        {
            Draw.Taken taken => new Drawn.Taken([.. taken.FromLots.Select(Share)]),
            Draw.Short missing => new Drawn.Short(AmountColumns.Like(amount, missing.Missing).Known()),
            _ => throw new InvalidOperationException("A draw is taken or short."),
        };

        LotShare Share(LotPortion portion)
        {
            var lot = lots.Single(one => ReferenceEquals(one.Open, portion.Lot));
            var worth = LotWorths.Part(lot.Cents, portion.Amount, lot.Open.Left);
            Book(material.Id, lot.Id, AmountColumns.Like(amount, -portion.Amount), -worth, reason, act);
            return new LotShare(lot.Id, lot.Label, AmountColumns.Like(amount, portion.Amount).Known());
        }
    }

    private void Find(Material material, AmountColumns over, IReadOnlyList<LotInBook> lots, Act act)
    {
        if (lots is [.., var newest])
        {
            Book(material.Id, newest.Id, over, worths.AtRateOf(newest.Id, over.Whole), StockReason.Counted, act);
        }
        else
        {
            Enter(new NewLot(material, over.Known(), act.HappenedAt), StockReason.Counted, act);
        }
    }

    private const string NewEntry = """
        insert into stock_entry (act_id, material_id, lot_id, microlitres, milligrams, pieces, cents, reason)
        values ($act, $material, $lot, $microlitres, $milligrams, $pieces, $cents, $reason)
        """;

    private void Book(long material, long lot, AmountColumns columns, long cents, StockReason reason, Act act) =>
        connection.Execute(NewEntry, new
        {
            act = act.Id,
            material,
            lot,
            microlitres = columns.Microlitres,
            milligrams = columns.Milligrams,
            pieces = columns.Pieces,
            cents,
            reason = Reasons.Of(reason),
        });

    private IReadOnlyList<LotInBook> Lots(long material, long? lot = null) =>
        [.. connection.Query<LotRow>(OpenLots, new { material, lot }).Select(row => row.From())];

    private static LotInBook AsOpen(LotInBook lot) => lot with { Open = lot.Open with { IsStopped = false } };

    private sealed record LotInBook(long Id, string? Label, OpenLot Open, long Cents);

    // Settable, not positional: a sum has no declared type for a constructor to be matched by.
    private sealed record LotRow
    {
        public long Id { get; init; }

        public string? Label { get; init; }

        public bool IsStopped { get; init; }

        public long Left { get; init; }

        public long Cents { get; init; }

        public LotInBook From() => new(Id, Label, new OpenLot(Label ?? string.Empty, Left, IsStopped), Cents);
    }

    // Settable likewise: a minimum.
    private sealed record FirstRow
    {
        public long MaterialId { get; init; }

        public long HappenedAt { get; init; }
    }

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
                Reasons.Read(Reason),
                ForId ?? AuthorId,
                Booked.Moment(HappenedAt))
            {
                Worth = new Money(Math.Abs(Cents)),
            };
        }
    }
}
