using Dapper;
using Microsoft.Data.Sqlite;
using StudioBot.Craft.Costs;

namespace StudioBot.Records.Materials;

/// <summary>What was bought or made when, for how much, and what is left of it.</summary>
public sealed class LotRecords
{
    private readonly SqliteConnection connection;

    internal LotRecords(SqliteConnection connection) => this.connection = connection;

    private const string Bought = """
        select id, label, material_id as materialId, bought_at as boughtAt, price_cents as priceCents,
               bought_microlitres as boughtMicrolitres, bought_milligrams as boughtMilligrams,
               bought_pieces as boughtPieces, left_microlitres as leftMicrolitres,
               left_milligrams as leftMilligrams, left_pieces as leftPieces
        from lot
        order by bought_at, id
        """;

    /// <summary>All lots, the oldest first: the first with something left is the next to be drawn from.</summary>
    public IReadOnlyList<Lot> All() => [.. connection.Query<Row>(Bought).Select(row => row.From())];

    private const string Came = """
        insert into lot (
            material_id, label, bought_at, price_cents, bought_microlitres, bought_milligrams, bought_pieces,
            left_microlitres, left_milligrams, left_pieces)
        values (
            $material, $label, $at, $price, $boughtMicrolitres, $boughtMilligrams, $boughtPieces,
            $leftMicrolitres, $leftMilligrams, $leftPieces)
        """;

    /// <summary>A delivery comes, or a mixture is made.</summary>
    /// <param name="material">Of what.</param>
    /// <param name="label">As written on it; none where nobody wrote one.</param>
    /// <param name="at">When it came.</param>
    /// <param name="price">What all of it cost; none where unknown.</param>
    /// <param name="bought">What came; above zero.</param>
    /// <param name="left">What is left of it; none: all.</param>
    /// <exception cref="ArgumentException">An amount is not measured as the material's form is.</exception>
    /// <exception cref="SqliteException">The material already has a lot of this label.</exception>
    public void Add(
        Material material,
        string? label,
        DateTimeOffset at,
        Money? price,
        Amount bought,
        Amount? left = null)
    {
        Measure.Check(material.Form, bought, left);
        var came = AmountColumns.Of(bought);
        var stays = AmountColumns.Of(left ?? bought);
        connection.Execute(Came, new
        {
            material = material.Id,
            label,
            at = Booked.At(at),
            price = price?.Cents,
            boughtMicrolitres = came.Microlitres,
            boughtMilligrams = came.Milligrams,
            boughtPieces = came.Pieces,
            leftMicrolitres = stays.Microlitres,
            leftMilligrams = stays.Milligrams,
            leftPieces = stays.Pieces,
        });
    }

    private sealed record Row(
        long Id,
        string? Label,
        long MaterialId,
        long BoughtAt,
        long? PriceCents,
        long? BoughtMicrolitres,
        long? BoughtMilligrams,
        long? BoughtPieces,
        long? LeftMicrolitres,
        long? LeftMilligrams,
        long? LeftPieces)
    {
        public Lot From() => new(
            Id,
            Label,
            MaterialId,
            Booked.Moment(BoughtAt),
            PriceCents is { } cents ? new Money(cents) : null,
            new AmountColumns(BoughtMicrolitres, BoughtMilligrams, BoughtPieces).Known(),
            new AmountColumns(LeftMicrolitres, LeftMilligrams, LeftPieces).Known());
    }
}
