using System.Text.Json;
using Dapper;
using Microsoft.Data.Sqlite;
using StudioBot.Craft.Surfaces;
using StudioBot.Craft.Units;
using StudioBot.Records.Acts;
using StudioBot.Records.Recipes;

namespace StudioBot.Records.Pieces;

/// <summary>What was poured, by number.</summary>
public sealed class PieceRecords
{
    private readonly SqliteConnection connection;
    private readonly PieceBook book;
    private readonly KeptRows kept;
    private readonly RememberedBy<(string Technique, int Most), IReadOnlyList<int>> measured;
    private readonly RememberedBy<(string Words, int Most), IReadOnlyList<int>> noted;

    internal PieceRecords(SqliteConnection connection)
    {
        this.connection = connection;
        book = new PieceBook(connection);
        kept = new KeptRows(connection);
        measured = new(connection, ["piece", "piece_event"], asked =>
            [.. connection.Query<int>(LastMeasured, new { technique = asked.Technique, most = asked.Most })]);
        noted = new(connection, ["piece", "piece_event", "coat"], asked =>
            [.. connection.Query<int>(LastNoted, new { words = asked.Words, most = asked.Most })]);
    }

    private const string Poured = """
        select piece.id, piece.number, piece.shape, piece.width_micrometres as widthMicrometres,
               piece.height_micrometres as heightMicrometres, piece.depth_micrometres as depthMicrometres,
               piece.technique, piece.colours, recipe.name as recipe, batch.number as batch, member.name as maker,
               piece.poured_at as pouredAt, stand.stage, shelf.label as shelf
        from piece
        join piece_stand as stand on stand.piece_id = piece.id
        join member on member.id = piece.maker_id
        left join recipe on recipe.id = piece.recipe_id
        left join batch on batch.id = piece.batch_id
        left join shelf on shelf.id = stand.shelf_id
        where piece.undone_id is null

        """;

    private const string PouredParts = """
        select part.piece_id as whole, part.material_id as materialId, material.name as material,
               part.microlitres, part.milligrams
        from piece_part as part
        join piece on piece.id = part.piece_id
        join material on material.id = part.material_id
        where piece.undone_id is null

        """;

    // Each its own query: one for all that also finds one would read all.
    private const string OfNumber = "and piece.number = $number ";
    private const string OfNumbers = "and piece.number in (select value from json_each($numbers)) ";
    private const string InStage = "and piece.id in (select piece_id from piece_stand where stage = $stage) ";
    private const string ByNumber = "order by piece.number";
    private const string ByPlace = "order by part.piece_id, part.position";

    /// <summary>All pieces, by number.</summary>
    public IReadOnlyList<Piece> All() => Those("", new { });

    /// <summary>The pieces that are in this stage now, by number.</summary>
    public IReadOnlyList<Piece> In(Stage stage) => Those(InStage, new { stage = Stages.Words.Of(stage) });

    /// <summary>The piece of this number; none where there is no such piece.</summary>
    public Piece? Find(int number) => Those(OfNumber, new { number }).SingleOrDefault();

    /// <summary>The pieces of these numbers, by number; those that are none are left out.</summary>
    public IReadOnlyList<Piece> These(IEnumerable<int> numbers) =>
        Those(OfNumbers, new { numbers = JsonSerializer.Serialize(numbers) });

    private const string LastMeasured = """
        select number
        from piece
        where undone_id is null
          and technique = $technique
          and exists (
            select 1 from live_piece_event as line
            where line.piece_id = piece.id and line.kind = 'left')
        order by poured_at desc, number desc
        limit $most
        """;

    /// <summary>The numbers of the last pieces of a technique of which what was left in the cups is on record, the
    /// last poured first.</summary>
    /// <param name="technique">Its name.</param>
    /// <param name="most">No more than these.</param>
    public IReadOnlyList<int> Measured(string technique, int most) => measured.Of((technique, most));

    private const string LastNoted = """
        with noted as (
            select line.piece_id as pieceId, max(line.id) as at
            from piece_event as line
            where line.kind = 'note'
              and line.words like '%' || $words || '%'
            group by line.piece_id),
        coated as (
            select piece.number, noted.at, coat.ratio_a as a, coat.ratio_b as b, coat.ratio_by as by
            from noted
            join piece on piece.id = noted.pieceId
            join piece_event as line on line.piece_id = piece.id and line.kind = 'coated'
            join coat on coat.event_id = line.id
            where piece.undone_id is null
            group by piece.number, coat.ratio_a, coat.ratio_b, coat.ratio_by),
        placed as (
            select number, at, row_number() over (partition by a, b, by order by at desc) as place
            from coated)
        select number
        from placed
        where place <= $most
        group by number
        order by max(at) desc
        """;

    /// <summary>The numbers of the last coated pieces in a note of which these words stood, be it taken back; the last
    /// noted first.</summary>
    /// <param name="words">A part of the note, in any case.</param>
    /// <param name="most">Of each resin that was asked for no more than these, so that none crowds out another.</param>
    public IReadOnlyList<int> Noted(string words, int most) => noted.Of((words, most));

    private IReadOnlyList<Piece> Those(string which, object parameters)
    {
        var parts = connection.Query<PartRow>(PouredParts + which + ByPlace, parameters)
            .ToLookup(row => row.Whole, row => row.From());
        return [.. connection.Query<Row>(Poured + which + ByNumber, parameters)
            .Select(row => row.From([.. parts[row.Id]]))];
    }

    private const string AllNumbers = """
        select number
        from piece
        where undone_id is null
        order by number
        """;

    /// <summary>The numbers of all pieces.</summary>
    public IReadOnlyList<int> Numbers() => [.. connection.Query<int>(AllNumbers)];

    /// <summary>What happened to all pieces and holds, by the moment it is about.</summary>
    public IReadOnlyList<PieceLine> Lines() => book.All();

    /// <summary>What happened to this piece and holds, by the moment it is about.</summary>
    public IReadOnlyList<PieceLine> Lines(int number) => book.Of(number);

    /// <summary>What happened to these pieces and holds, by the moment it is about.</summary>
    public IReadOnlyList<PieceLine> Lines(IEnumerable<int> numbers) => book.Of(numbers);

    private const string NumbersOfAct = """
        select distinct piece.number
        from live_piece_event as line
        join piece on piece.id = line.piece_id
        where line.act_id = $act
        order by piece.number
        """;

    /// <summary>The numbers of the pieces that an act is about.</summary>
    public IReadOnlyList<int> NumbersOf(long actId) => [.. connection.Query<int>(NumbersOfAct, new { act = actId })];

    /// <summary>The lines of the book that hold and are about this time, of all pieces, by their moments.</summary>
    /// <param name="from">From this moment.</param>
    /// <param name="until">Until before this one.</param>
    public IReadOnlyList<PieceLine> LinesBetween(DateTimeOffset from, DateTimeOffset until) =>
        book.Within(Booked.At(from), Booked.At(until));

    private const string Given = """
        select number, shape, width_micrometres as widthMicrometres, height_micrometres as heightMicrometres,
               depth_micrometres as depthMicrometres
        from piece_number
        where number = $number
          and not exists (select 1 from piece where piece.number = piece_number.number and piece.undone_id is null)
        """;

    /// <summary>The number that was reserved and waits for its pour; none where it does not.</summary>
    public ReservedNumber? FindReserved(int number) =>
        connection.QuerySingleOrDefault<GivenRow>(Given, new { number })?.From();

    private const string AllGiven = """
        select number, shape, width_micrometres as widthMicrometres, height_micrometres as heightMicrometres,
               depth_micrometres as depthMicrometres
        from piece_number
        where not exists (select 1 from piece where piece.number = piece_number.number and piece.undone_id is null)
        order by number
        """;

    /// <summary>The numbers that were reserved and wait for their pours, in their order.</summary>
    public IReadOnlyList<ReservedNumber> Reserved() =>
        [.. connection.Query<GivenRow>(AllGiven).Select(row => row.From())];

    private const string NextNumber = """
        select coalesce(max(number), 0) + 1
        from (
            select number from piece where undone_id is null
            union all
            select number from piece_number)
        """;

    private const string NewNumber = """
        insert into piece_number (number, shape, width_micrometres, height_micrometres, depth_micrometres, act_id)
        values ($number, $shape, $width, $height, $depth, $act)
        """;

    /// <summary>Gives the next number to what is to be poured later.</summary>
    /// <returns>The number to write under it.</returns>
    public int Reserve(Surface surface, Length? depth, Act act)
    {
        var number = connection.ExecuteScalar<int>(NextNumber);
        var (shape, width, height) = SurfaceColumns.Of(surface);
        kept.Change(act, KeptTable.PieceNumber, number, () => connection.Execute(NewNumber, new
        {
            number,
            shape,
            width,
            height,
            depth = depth is { } deep ? Booked.Micrometres(deep) : (long?)null,
            act = act.Id,
        }));
        return number;
    }

    private const string NewOne = """
        insert into piece (
            number, shape, width_micrometres, height_micrometres, depth_micrometres, technique, colours, recipe_id,
            batch_id, maker_id, poured_at, act_id)
        values (
            $number, $shape, $width, $height, $depth, $technique, $colours, $recipe,
            (select id from batch where number = $batch), $maker, $at, $act)
        returning id
        """;

    private const string NewPart = """
        insert into piece_part (piece_id, position, material_id, microlitres, milligrams)
        values ($whole, $position, $material, $microlitres, $milligrams)
        """;

    /// <summary>Records a pour, which gets the next number or the one that was reserved for it.</summary>
    /// <returns>The number to write under it.</returns>
    /// <exception cref="ArgumentException">There is no batch of that number, or no such number waits.</exception>
    /// <exception cref="SqliteException">A figure is out of its range, or a material stands twice.</exception>
    public int Pour(NewPiece piece, Act act)
    {
        if (piece.Batch is { } batch && new BatchRecords(connection).Find(batch) is null)
        {
            throw new ArgumentException($"There is no batch {batch}.", nameof(piece));
        }

        if (piece.Number is { } reserved && FindReserved(reserved) is null)
        {
            throw new ArgumentException($"No number {reserved} waits for a pour.", nameof(piece));
        }

        var (shape, width, height) = SurfaceColumns.Of(piece.Surface);
        var number = piece.Number ?? connection.ExecuteScalar<int>(NextNumber);
        var id = connection.ExecuteScalar<long>(NewOne, new
        {
            number,
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
            act = act.Id,
        });
        connection.Execute(NewPart, PartRow.Columns(id, piece.Parts));
        book.Append(id, new PieceEvent.Poured(piece.Stage, piece.Poured), act);
        if (piece.Shelf is { } shelf)
        {
            book.Append(id, new PieceEvent.Shelved(shelf.Label), act);
        }

        return number;
    }

    private const string Identity = """
        select id
        from piece
        where number = $number
          and undone_id is null
        """;

    /// <summary>Something happened to a piece.</summary>
    /// <exception cref="ArgumentException">There is no such piece, or it says that the piece is poured.</exception>
    /// <exception cref="SqliteException">A figure is out of its range.</exception>
    public void Book(int number, PieceEvent what, Act act)
    {
        if (what is PieceEvent.Poured || connection.ExecuteScalar<long?>(Identity, new { number }) is not { } id)
        {
            throw new ArgumentException($"There is no piece {number} that this could happen to.", nameof(number));
        }

        book.Append(id, what, act);
    }

    /// <summary>Puts a piece back to the last stage it had that comes before its present one.</summary>
    /// <returns>The stage it has now; none where it never had an earlier one, and nothing is booked.</returns>
    /// <exception cref="ArgumentException">There is no such piece.</exception>
    public Stage? GoBack(int number, Act act)
    {
        var piece = Find(number) ?? throw new ArgumentException($"There is no piece {number}.", nameof(number));
        var had = connection.Query<string>(Had, new { number }).Select(Stages.Words.Read).ToList();
        if (had.Where(stage => stage < piece.Stage).Select(stage => (Stage?)stage).FirstOrDefault() is not { } earlier)
        {
            return null;
        }

        Book(number, new PieceEvent.Staged(earlier), act);
        return earlier;
    }

    private const string Had = """
        select line.stage
        from live_piece_event as line
        join piece on piece.id = line.piece_id
        where piece.number = $number
          and piece.undone_id is null
          and line.stage is not null
        order by line.id desc
        """;

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
            Stages.Words.Read(Stage),
            Shelf,
            parts);
    }

    private sealed record GivenRow(
        long Number, string Shape, long WidthMicrometres, long? HeightMicrometres, long? DepthMicrometres)
    {
        public ReservedNumber From() => new(
            checked((int)Number),
            new SurfaceColumns(Shape, WidthMicrometres, HeightMicrometres).From(),
            DepthMicrometres is { } depth ? Booked.Length(depth) : null);
    }
}
