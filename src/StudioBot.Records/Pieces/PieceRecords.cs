using Dapper;
using Microsoft.Data.Sqlite;
using StudioBot.Records.Recipes;

namespace StudioBot.Records.Pieces;

/// <summary>What was poured, by number.</summary>
public sealed class PieceRecords
{
    private static readonly StoredWords<Stage> Stages = new(
        (Stage.Drying, "drying"),
        (Stage.Ready, "ready"),
        (Stage.Coated, "coated"),
        (Stage.Cured, "cured"),
        (Stage.Kept, "kept"),
        (Stage.Sold, "sold"),
        (Stage.Bin, "bin"));

    private readonly SqliteConnection connection;

    internal PieceRecords(SqliteConnection connection) => this.connection = connection;

    private const string Poured = """
        select piece.id, piece.number, piece.shape, piece.width_micrometres as widthMicrometres,
               piece.height_micrometres as heightMicrometres, piece.depth_micrometres as depthMicrometres,
               piece.technique, piece.colours, recipe.name as recipe, batch.number as batch, member.name as maker,
               piece.poured_at as pouredAt, piece.stage, shelf.label as shelf
        from piece
        join member on member.id = piece.maker_id
        left join recipe on recipe.id = piece.recipe_id
        left join batch on batch.id = piece.batch_id
        left join shelf on shelf.id = piece.shelf_id
        where $number is null or piece.number = $number
        order by piece.number
        """;

    private const string PouredParts = """
        select part.piece_id as whole, part.material_id as materialId, material.name as material,
               part.microlitres, part.milligrams
        from piece_part as part
        join piece on piece.id = part.piece_id
        join material on material.id = part.material_id
        where $number is null or piece.number = $number
        order by part.piece_id, part.position
        """;

    /// <summary>All pieces, by number.</summary>
    public IReadOnlyList<Piece> All() => Numbered(null);

    /// <summary>The piece of this number; none where there is no such piece.</summary>
    public Piece? Find(int number) => Numbered(number).SingleOrDefault();

    private IReadOnlyList<Piece> Numbered(int? number)
    {
        var parts = connection.Query<PartRow>(PouredParts, new { number })
            .ToLookup(row => row.Whole, row => row.From());
        return [.. connection.Query<Row>(Poured, new { number }).Select(row => row.From([.. parts[row.Id]]))];
    }

    private const string NewOne = """
        insert into piece (
            number, shape, width_micrometres, height_micrometres, depth_micrometres, technique, colours, recipe_id,
            batch_id, maker_id, poured_at, stage, shelf_id)
        select coalesce(max(number), 0) + 1, $shape, $width, $height, $depth, $technique, $colours, $recipe,
               (select id from batch where number = $batch), $maker, $at, $stage, $shelf
        from piece
        returning id, number
        """;

    private const string NewPart = """
        insert into piece_part (piece_id, position, material_id, microlitres, milligrams)
        values ($whole, $position, $material, $microlitres, $milligrams)
        """;

    /// <summary>Records a pour, which gets the next number.</summary>
    /// <returns>The number to write under it.</returns>
    /// <exception cref="ArgumentException">There is no batch of that number.</exception>
    /// <exception cref="SqliteException">A figure is out of its range, or a material stands twice.</exception>
    public int Add(NewPiece piece)
    {
        if (piece.Batch is { } batch && new BatchRecords(connection).Find(batch) is null)
        {
            throw new ArgumentException($"There is no batch {batch}.", nameof(piece));
        }

        var (shape, width, height) = SurfaceColumns.Of(piece.Surface);
        var (id, number) = connection.QuerySingle<(long, int)>(NewOne, new
        {
            shape,
            width,
            height,
            depth = piece.Depth is { } depth ? Booked.Micrometres(depth) : (long?)null,
            technique = piece.Technique,
            colours = piece.Colours,
            recipe = piece.Recipe?.Id,
            batch = piece.Batch,
            maker = piece.Maker.Id,
            at = Booked.At(piece.PouredAt),
            stage = Stages.Of(piece.Stage),
            shelf = piece.Shelf?.Id,
        });
        connection.Execute(NewPart, PartRow.Columns(id, piece.Parts));
        return number;
    }

    private sealed record Row(
        long Id,
        long Number,
        string Shape,
        long WidthMicrometres,
        long? HeightMicrometres,
        long? DepthMicrometres,
        string Technique,
        long? Colours,
        string? Recipe,
        long? Batch,
        string Maker,
        long PouredAt,
        string Stage,
        string? Shelf)
    {
        public Piece From(IReadOnlyList<Part> parts) => new(
            checked((int)Number),
            new SurfaceColumns(Shape, WidthMicrometres, HeightMicrometres).From(),
            DepthMicrometres is { } depth ? Booked.Length(depth) : null,
            Technique,
            checked((int?)Colours),
            Recipe,
            checked((int?)Batch),
            Maker,
            Booked.Moment(PouredAt),
            Stages.Read(Stage),
            Shelf,
            parts);
    }
}
