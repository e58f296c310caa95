using System.Text.Json;
using Dapper;
using Microsoft.Data.Sqlite;
using StudioBot.Craft.Costs;

namespace StudioBot.Records.Materials;

/// <summary>What was bought or made when, for how much, and what is left of it: the sum of its lines in the book.
/// </summary>
public sealed class LotRecords
{
    private readonly SqliteConnection connection;
    private readonly RememberedBy<long, IReadOnlyList<Lot>> ofMaterial;

    internal LotRecords(SqliteConnection connection)
    {
        this.connection = connection;
        ofMaterial = new(connection, ["lot", "lot_sum", "lot_stop"], material =>
            Those(OfMaterial, new { material }));
    }

    private const string Bought = """
        select lot.id, lot.label, lot.material_id as materialId, lot.bought_at as boughtAt,
               lot.price_cents as priceCents, lot.bought_microlitres as boughtMicrolitres,
               lot.bought_milligrams as boughtMilligrams, lot.bought_pieces as boughtPieces,
               lot.opened_at as openedAt, stop.stopped_at as stoppedAt, stop.why,
               held.units as "left", held.cents
        from lot
        join lot_sum as held on held.lot_id = lot.id
        left join lot_stop as stop on stop.lot_id = lot.id
        where lot.undone_id is null

        """;

    private const string OfMaterial = "and lot.material_id = $material ";
    private const string These = "and lot.id in (select value from json_each($lots)) ";
    private const string Bearing = "and lot.label in (select value from json_each($labels)) ";
    private const string ByAge = "order by lot.bought_at, lot.id";

    /// <summary>All lots, the oldest first: the first with something left is the next to be drawn from.</summary>
    public IReadOnlyList<Lot> All() => Those("", new { });

    /// <summary>The lots of one material, the oldest first.</summary>
    public IReadOnlyList<Lot> Of(long materialId) => ofMaterial.Of(materialId);

    /// <summary>These lots, the oldest first; without those that were taken back.</summary>
    public IReadOnlyList<Lot> Of(IEnumerable<long> ids) => Those(These, new { lots = JsonSerializer.Serialize(ids) });

    /// <summary>The lots of these labels, the oldest first, however their case is written; a kit's is on two.</summary>
    public IReadOnlyList<Lot> Labelled(IReadOnlyCollection<string> labels) => labels.Count == 0
        ? []
        : Those(Bearing, new { labels = JsonSerializer.Serialize(labels) });

    /// <summary>The lot of this number; none where it was taken back.</summary>
    public Lot? Find(long id) => Of([id]).SingleOrDefault();

    private IReadOnlyList<Lot> Those(string which, object parameters) =>
        [.. connection.Query<Row>(Bought + which + ByAge, parameters).Select(row => row.From())];

    private const string AllLabels = """
        select distinct label
        from lot
        where undone_id is null
          and label is not null
        """;

    /// <summary>The labels of all lots; a kit's stands once, though it is on two.</summary>
    public IReadOnlyList<string> Labels() => [.. connection.Query<string>(AllLabels)];

    private const string OnShelf = """
        select coalesce(sum(cents), 0)
        from lot_sum
        """;

    /// <summary>What all lots together are worth, by what they had cost.</summary>
    public Money Worth() => new(connection.ExecuteScalar<long>(OnShelf));

    // Settable, not positional: a sum has no declared type for a constructor to be matched by.
    private sealed record Row
    {
        public long Id { get; init; }

        public string? Label { get; init; }

        public long MaterialId { get; init; }

        public long BoughtAt { get; init; }

        public long? PriceCents { get; init; }

        public long? BoughtMicrolitres { get; init; }

        public long? BoughtMilligrams { get; init; }

        public long? BoughtPieces { get; init; }

        public long? OpenedAt { get; init; }

        public long? StoppedAt { get; init; }

        public string? Why { get; init; }

        public long Left { get; init; }

        public long Cents { get; init; }

        public Lot From()
        {
            var bought = new AmountColumns(BoughtMicrolitres, BoughtMilligrams, BoughtPieces).Known();
            return new Lot(
                Id,
                Label,
                MaterialId,
                Booked.Moment(BoughtAt),
                PriceCents is { } cents ? new Money(cents) : null,
                bought,
                AmountColumns.Like(bought, Left).Known())
            {
                Worth = new Money(Cents),
                OpenedAt = Booked.Moment(OpenedAt),
                Stopped = Booked.Moment(StoppedAt) is { } at ? new LotStop(at, Why) : null,
            };
        }
    }
}
