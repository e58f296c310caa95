using Dapper;
using Microsoft.Data.Sqlite;
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

    /// <summary>By which a material is used; what comes back is taken off again.</summary>
    public static readonly IReadOnlySet<StockReason> Uses = new HashSet<StockReason>
    {
        StockReason.Used, StockReason.Mixed, StockReason.Poured, StockReason.Coated, StockReason.Returned,
    };

    private readonly SqliteConnection connection;
    private readonly KeptRows kept;
    private readonly LotWorths worths;
    private readonly MemberUses uses;
    private readonly CountRecords counts;
    private readonly StockLines lines;

    internal StockRecords(SqliteConnection connection)
    {
        this.connection = connection;
        kept = new KeptRows(connection);
        worths = new LotWorths(connection);
        uses = new MemberUses(connection);
        counts = new CountRecords(connection);
        lines = new StockLines(connection);
    }

    private const string OpenLots = """
        select lot.id, lot.label, stop.lot_id is not null as isStopped, held.units as "left", held.cents
        from lot
        join lot_sum as held on held.lot_id = lot.id
        left join lot_stop as stop on stop.lot_id = lot.id
        where held.material_id = $material
          and (held.units > 0 or lot.id = $lot or $lot is null and lot.id = (
            select newest.id
            from lot as newest
            where newest.material_id = $material and newest.undone_id is null
              and newest.id not in (select lot_id from lot_stop)
            order by newest.bought_at desc, newest.id desc
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

    /// <summary>Draws from these lots only, the first one first, stopped or not: what was done is booked; all of it or
    /// nothing.</summary>
    /// <inheritdoc cref="Draw(Material, Amount, StockReason, Act)"/>
    public Drawn DrawFrom(IReadOnlyList<Lot> lots, Material material, Amount amount, StockReason reason, Act act) =>
        Draw(material, amount, Named(lots, material), reason, act);

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

    /// <summary>Somebody counted: the book takes the level that was found in the lots in use, or in those named.
    /// </summary>
    /// <remarks>What is missing leaves the oldest lots; what is over goes into the newest one, at what that one is
    /// worth, or into an unlabelled one where there is none. Stopped lots stay as they are unless they are named. A
    /// count that nothing but counts came before is booked in place of those: the lots come to stand as if it had been
    /// the first.</remarks>
    /// <exception cref="ArgumentException">The amount is not measured as the material's form is.</exception>
    public Stocktake Count(Material material, Amount counted, Act act, IReadOnlyList<Lot>? named = null)
    {
        Measure.Check(material.Form, counted);
        var found = AmountColumns.Of(counted);
        var before = AmountColumns.Like(counted, Counted(named, material).Sum(lot => lot.Open.Left));
        if (found != before)
        {
            counts.TakeBackRun(material.Id, found, named, act);
        }

        var lots = Counted(named, material);
        var over = found.Whole - lots.Sum(lot => lot.Open.Left);
        if (over < 0)
        {
            Draw(material, AmountColumns.Like(counted, -over).Known(), lots, StockReason.Counted, act);
        }
        else if (over > 0)
        {
            Find(material, AmountColumns.Like(counted, over), lots, act);
        }

        return new Stocktake(before.Known(), counted);
    }

    private IReadOnlyList<LotInBook> Counted(IReadOnlyList<Lot>? named, Material material) => named is { Count: > 0 }
        ? Named(named, material)
        : [.. Lots(material.Id).Where(lot => !lot.Open.IsStopped)];

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

    /// <summary>The lines of the book, in the order they were booked; an undone line is followed by its opposite.
    /// </summary>
    /// <param name="since">The moment from which the acts are about; none: from the beginning.</param>
    /// <param name="materialId">Of this material only; none: of all.</param>
    public IReadOnlyList<StockLine> Entries(DateTimeOffset? since = null, long? materialId = null) =>
        lines.Listed(since, materialId);

    /// <summary>The lines of the book that hold, in the order they were booked: what was undone is not among them.
    /// </summary>
    /// <param name="materialId">Of this material only; none: of all.</param>
    /// <param name="lotId">Of this lot only; none: of all.</param>
    public IReadOnlyList<StockLine> Holding(long? materialId = null, long? lotId = null) =>
        lines.Holding(materialId, lotId);

    /// <summary>The lines of a material and a reason that hold, in the order they were booked.</summary>
    public IReadOnlyList<StockLine> HoldingFor(long materialId, StockReason reason) =>
        lines.HoldingFor(materialId, reason);

    /// <summary>What of a material came last, or went, by other ways than a count; none where nothing did.</summary>
    public StockLine? LastMoved(long materialId, bool fills) => lines.LastMoved(materialId, fills);

    /// <summary>What the book said of a material once this act was written, in millilitres, grams or pieces.</summary>
    /// <param name="materialId">Of which.</param>
    /// <param name="act">The act's number.</param>
    /// <param name="apartLots">Lots that are left out.</param>
    public double Level(long materialId, long act, IEnumerable<long> apartLots) =>
        lines.Level(materialId, act, apartLots);

    /// <summary>What of a material came and went after this act, without what was undone.</summary>
    /// <param name="materialId">Of which.</param>
    /// <param name="act">The act's number; 0: from the beginning.</param>
    /// <param name="withOpening">Whether what was there when the books opened came, too.</param>
    /// <param name="apartLots">Lots that are left out.</param>
    public StockMoves Moved(long materialId, long act, bool withOpening, IEnumerable<long> apartLots) =>
        lines.Moved(materialId, act, withOpening, apartLots);

    /// <summary>The lines that hold of acts about this time, in the order they were booked.</summary>
    /// <param name="from">From this moment.</param>
    /// <param name="until">Until before this one.</param>
    public IReadOnlyList<StockLine> HoldingBetween(DateTimeOffset from, DateTimeOffset until) =>
        lines.HoldingBetween(from, until);

    /// <summary>The lines that hold of these acts, in the order they were booked.</summary>
    public IReadOnlyList<StockLine> HoldingOf(IEnumerable<long> acts) => lines.HoldingOf(acts);

    /// <summary>The lines of a material that were written after this moment, undone ones and their opposites too.
    /// </summary>
    public IReadOnlyList<StockLine> WrittenAfter(DateTimeOffset moment, long materialId) =>
        lines.WrittenAfter(moment, materialId);

    /// <summary>Whether more of a material was booked as bought after this moment than was taken back.</summary>
    public bool HasCome(long materialId, DateTimeOffset since) => lines.Bought(materialId, since) > 0;

    /// <summary>The moments at which it was written that a material came, in their order; what was taken back is not
    /// among them.</summary>
    public IReadOnlyList<DateTimeOffset> CameAt(long materialId) => lines.CameAt(materialId);

    /// <summary>How a material was used, and what came back of it; what was undone is not among it.</summary>
    /// <param name="since">From this moment.</param>
    /// <param name="materialId">Of which.</param>
    /// <param name="firstAct">The first act that was written since: no use is written before it happens. It is asked
    /// for where lines have to be read, as they mostly are known.</param>
    /// <param name="behindAct">Up to before this act; none: up to now.</param>
    /// <returns>The uses, to be looked at before anything else is read.</returns>
    public IEnumerable<UseAt> UsesSince(
        DateTimeOffset since, long materialId, Lazy<long> firstAct, long? behindAct = null) =>
        lines.UsesSince(since, materialId, firstAct, behindAct);

    /// <summary>Since when a material is in the book; none where nothing of it ever came.</summary>
    public DateTimeOffset? Begun(long materialId) => lines.Begun(materialId);

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
    public IReadOnlyList<StockLine> Of(Act act) => lines.Of(act.Id);

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

    private IReadOnlyList<LotInBook> Named(IReadOnlyList<Lot> lots, Material material) =>
        lots.FirstOrDefault(lot => lot.MaterialId != material.Id) is { } other
            ? throw new ArgumentException($"Lot {other.Id} is not of {material.Name}.", nameof(lots))
            : [.. lots.SelectMany(lot => Lots(material.Id, lot.Id)).Select(AsOpen)];

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
}
