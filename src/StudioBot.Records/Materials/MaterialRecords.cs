using Dapper;
using Microsoft.Data.Sqlite;
using StudioBot.Craft.Costs;
using StudioBot.Records.Acts;

namespace StudioBot.Records.Materials;

/// <summary>What the studio works with, and how much of it is there.</summary>
public sealed class MaterialRecords
{
    private static readonly StoredWords<MaterialForm> Forms = new(
        (MaterialForm.Liquid, "liquid"),
        (MaterialForm.Powder, "powder"),
        (MaterialForm.Counted, "counted"),
        (MaterialForm.Mixture, "mixture"),
        (MaterialForm.ResinA, "resin_a"),
        (MaterialForm.HardenerB, "hardener_b"));

    private readonly SqliteConnection connection;
    private readonly KeptRows kept;
    private readonly Remembered<IReadOnlyList<Material>> all;
    private readonly Remembered<IReadOnlyList<Level>> levels;

    internal MaterialRecords(SqliteConnection connection)
    {
        this.connection = connection;
        kept = new KeptRows(connection);
        all = new(connection, ["material", "pack"], Read);
        levels = new(connection, ["material", "lot_sum", "lot_stop"], () =>
            [.. connection.Query<LevelRow>(Held).Select(row => row.From())]);
    }

    private const string Named = """
        select id, name, form, density_grams_per_millilitre as density, teaspoon_milligrams as teaspoonMilligrams,
               solids_share as solidsShare, low_microlitres as lowMicrolitres, low_milligrams as lowMilligrams,
               low_pieces as lowPieces, bottle_milligrams as bottleMilligrams, shelf_life_days as shelfLifeDays,
               lead_time_days as leadTimeDays, shared
        from material
        order by id
        """;

    private const string Packed = """
        select material_id as materialId, microlitres, milligrams, pieces, price_cents as priceCents
        from pack
        order by material_id, coalesce(microlitres, milligrams, pieces), id
        """;

    /// <summary>All materials, in the order they were named.</summary>
    public IReadOnlyList<Material> All() => all.Value;

    private List<Material> Read()
    {
        var packs = connection.Query<PackRow>(Packed).ToLookup(row => row.MaterialId, row => row.From());
        return [.. connection.Query<Row>(Named).Select(row => row.From([.. packs[row.Id]]))];
    }

    private const string Held = """
        select material.id, material.form,
               coalesce(sum(held.units) filter (where stop.lot_id is null), 0) as units,
               coalesce(sum(held.units) filter (where stop.lot_id is not null), 0) as stopped
        from material
        left join lot_sum as held on held.material_id = material.id and held.units > 0
        left join lot_stop as stop on stop.lot_id = held.lot_id
        group by material.id
        order by material.id
        """;

    /// <summary>What is left of every material, in use and stopped: together the sum of its lines in the book.
    /// </summary>
    public IReadOnlyList<Level> Levels() => levels.Value;

    private const string NewOne = """
        insert into material (
            name, form, density_grams_per_millilitre, teaspoon_milligrams, solids_share,
            low_microlitres, low_milligrams, low_pieces)
        values ($name, $form, $density, $teaspoon, $solids, $lowMicrolitres, $lowMilligrams, $lowPieces)
        returning id
        """;

    private const string NewPack = """
        insert into pack (material_id, microlitres, milligrams, pieces, price_cents)
        values ($material, $microlitres, $milligrams, $pieces, $price)
        """;

    /// <summary>Names a material.</summary>
    /// <exception cref="ArgumentException">Its low level or a pack is not measured as its form is.</exception>
    /// <exception cref="SqliteException">The name is taken, or a figure is out of its range.</exception>
    public Material Add(NewMaterial material, Act? act = null)
    {
        Measure.Check(material.Form, [material.Low, .. material.Packs.Select(pack => pack.Holds)]);
        var low = AmountColumns.Of(material.Low);
        var id = connection.ExecuteScalar<long>(NewOne, new
        {
            name = material.Name,
            form = Forms.Of(material.Form),
            density = material.Density?.GramsPerMillilitre,
            teaspoon = material.GramsPerTeaspoon is { } spoon ? Booked.Milligrams(spoon) : (long?)null,
            solids = material.SolidsShare,
            lowMicrolitres = low.Microlitres,
            lowMilligrams = low.Milligrams,
            lowPieces = low.Pieces,
        });
        connection.Execute(NewPack, material.Packs.Select(pack => PackColumns(id, pack)));
        kept.Added(act, KeptTable.Material, id);
        kept.Added(act, KeptTable.Packs, id);
        return All().Single(one => one.Id == id);
    }

    private const string ChangeOne = """
        update material
        set name = $name, density_grams_per_millilitre = $density, teaspoon_milligrams = $teaspoon,
            solids_share = $solids, low_microlitres = $lowMicrolitres, low_milligrams = $lowMilligrams,
            low_pieces = $lowPieces, bottle_milligrams = $bottle, shelf_life_days = $shelfLife,
            lead_time_days = $leadTime, shared = $shared
        where id = $id
        """;

    private const string DropPacks = """
        delete from pack
        where material_id = $material
        """;

    /// <summary>What is known of a material is this from now on; its form stays.</summary>
    /// <exception cref="ArgumentException">Its low level or a pack is not measured as its form is.</exception>
    /// <exception cref="SqliteException">The name is taken, or a figure is out of its range.</exception>
    public void Change(Material material, Act act)
    {
        Measure.Check(material.Form, [material.Low, .. material.Packs.Select(pack => pack.Holds)]);
        var low = AmountColumns.Of(material.Low);
        kept.Change(act, KeptTable.Material, material.Id, () => connection.Execute(ChangeOne, new
        {
            id = material.Id,
            name = material.Name,
            density = material.Density?.GramsPerMillilitre,
            teaspoon = material.GramsPerTeaspoon is { } spoon ? Booked.Milligrams(spoon) : (long?)null,
            solids = material.SolidsShare,
            lowMicrolitres = low.Microlitres,
            lowMilligrams = low.Milligrams,
            lowPieces = low.Pieces,
            bottle = material.Bottle is { } bottle ? Booked.Milligrams(bottle) : (long?)null,
            shelfLife = material.ShelfLife?.Days,
            leadTime = material.LeadTime?.Days,
            shared = material.IsShared,
        }));
        kept.Change(act, KeptTable.Packs, material.Id, () =>
        {
            connection.Execute(DropPacks, new { material = material.Id });
            connection.Execute(NewPack, material.Packs.Select(pack => PackColumns(material.Id, pack)));
        });
    }

    private static object PackColumns(long material, Pack pack)
    {
        var (microlitres, milligrams, pieces) = AmountColumns.Of(pack.Holds);
        return new { material, microlitres, milligrams, pieces, price = pack.Price?.Cents };
    }

    private sealed record Row(
        long Id,
        string Name,
        string Form,
        double? Density,
        long? TeaspoonMilligrams,
        double? SolidsShare,
        long? LowMicrolitres,
        long? LowMilligrams,
        long? LowPieces,
        long? BottleMilligrams,
        long? ShelfLifeDays,
        long? LeadTimeDays,
        long Shared)
    {
        public Material From(IReadOnlyList<Pack> packs) => new(
            Id,
            Name,
            Forms.Read(Form),
            Density is { } known ? Craft.Units.Density.FromGramsPerMillilitre(known) : null,
            TeaspoonMilligrams is { } spoon ? Booked.Mass(spoon) : null,
            SolidsShare,
            new AmountColumns(LowMicrolitres, LowMilligrams, LowPieces).From(),
            packs)
        {
            Bottle = BottleMilligrams is { } bottle ? Booked.Mass(bottle) : null,
            ShelfLife = Days(ShelfLifeDays),
            LeadTime = Days(LeadTimeDays),
            IsShared = Shared != 0,
        };

        private static TimeSpan? Days(long? days) => days is { } known ? TimeSpan.FromDays(known) : null;
    }

    private sealed record PackRow(
        long MaterialId,
        long? Microlitres,
        long? Milligrams,
        long? Pieces,
        long? PriceCents)
    {
        public Pack From() => new(
            new AmountColumns(Microlitres, Milligrams, Pieces).Known(),
            PriceCents is { } cents ? new Money(cents) : null);
    }

    // Settable, not positional: a sum over no rows has no declared type for a constructor to be matched by.
    private sealed record LevelRow
    {
        public long Id { get; init; }

        public string Form { get; init; } = string.Empty;

        public long Units { get; init; }

        public long Stopped { get; init; }

        public Level From() => new(Id, Measured(Units), Measured(Stopped));

        private Amount Measured(long units) => Forms.Read(Form) switch
        {
            MaterialForm.Powder => new Amount.ByMass(Booked.Mass(units)),
            MaterialForm.Counted => new Amount.ByCount(checked((int)units)),
            _ => new Amount.ByVolume(Booked.Volume(units)),
        };
    }
}
