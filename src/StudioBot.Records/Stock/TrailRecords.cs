using System.Text.Json;
using Dapper;
using Microsoft.Data.Sqlite;
using StudioBot.Records.Materials;
using StudioBot.Records.Pieces;

namespace StudioBot.Records.Stock;

/// <summary>Where lots went, one step at a time: each asks for the lines of what is followed, never for a whole
/// book.</summary>
public sealed class TrailRecords
{
    private readonly SqliteConnection connection;

    internal TrailRecords(SqliteConnection connection) => this.connection = connection;

    private const string OfLot = """
        select lot.id as lotId, lot.label, batch.number
        from lot
        left join batch on batch.lot_id = lot.id and batch.undone_id is null
        where lot.id = $lot
        """;

    /// <summary>A lot as something that is followed.</summary>
    /// <exception cref="InvalidOperationException">There is no such lot.</exception>
    public TrailVessel Lot(long lotId) => connection.QuerySingle<VesselRow>(OfLot, new { lot = lotId }).From();

    private const string OfBatch = """
        select batch.lot_id as lotId, lot.label, batch.number
        from batch
        left join lot on lot.id = batch.lot_id
        where batch.number = $number
          and batch.undone_id is null
        """;

    /// <summary>A batch as something that is followed; none where there is no such batch.</summary>
    public TrailVessel? Batch(int number) =>
        connection.QuerySingleOrDefault<VesselRow>(OfBatch, new { number })?.From();

    private const string HeldOfLot = """
        select entry.act_id as actId, entry.microlitres, entry.milligrams, entry.pieces, entry.reason
        from stock_entry as entry
        where entry.lot_id = $lot
          and entry.undoes_id is null
          and not exists (select 1 from stock_entry as answer where answer.undoes_id = entry.id)
        order by entry.id
        """;

    /// <summary>The lines of a lot that hold, in the order they were booked.</summary>
    public IReadOnlyList<TrailLine> Lines(long lotId) =>
        [.. connection.Query<LineRow>(HeldOfLot, new { lot = lotId }).Select(row => row.From())];

    private const string MadeByActs = """
        select entry.act_id as actId, lot.id as lotId, lot.label, batch.number
        from stock_entry as entry
        join lot on lot.id = entry.lot_id
        left join batch on batch.lot_id = lot.id and batch.undone_id is null
        where entry.act_id in (select value from json_each($acts))
          and entry.reason = 'made'
          and entry.undoes_id is null
          and not exists (select 1 from stock_entry as answer where answer.undoes_id = entry.id)
        union
        select batch.act_id, batch.lot_id, lot.label, batch.number
        from batch
        left join lot on lot.id = batch.lot_id
        where batch.act_id in (select value from json_each($acts))
          and batch.undone_id is null
        order by actId, number
        """;

    /// <summary>What was made by these acts, or grew by them.</summary>
    public ILookup<long, TrailVessel> MadeBy(IEnumerable<long> acts) => connection
        .Query<MadeRow>(MadeByActs, new { acts = JsonSerializer.Serialize(acts) })
        .ToLookup(row => row.ActId, row => row.From());

    private const string PiecesOfActs = """
        select line.act_id as actId, piece.number, line.kind = 'coated' as isCoat
        from live_piece_event as line
        join piece on piece.id = line.piece_id
        where line.act_id in (select value from json_each($acts))
          and line.kind in ('poured', 'coated')
          and piece.undone_id is null
        order by line.id
        """;

    /// <summary>The pieces that were poured or coated by these acts.</summary>
    public IReadOnlyList<TrailPiece> PiecesOf(IEnumerable<long> acts) =>
        [
            .. connection.Query<PieceRow>(PiecesOfActs, new { acts = JsonSerializer.Serialize(acts) })
                .Select(row => row.From()),
        ];

    private const string CoatsOfLot = """
        select line.act_id as actId, piece.number, 1 as isCoat
        from coat_lot as share
        join live_piece_event as line on line.id = share.event_id
        join piece on piece.id = line.piece_id
        where share.lot_id = $lot
          and piece.undone_id is null
        order by line.id
        """;

    /// <summary>The pieces of whose coats it was said that they are of this lot.</summary>
    public IReadOnlyList<TrailPiece> CoatedWith(long lotId) =>
        [.. connection.Query<PieceRow>(CoatsOfLot, new { lot = lotId }).Select(row => row.From())];

    private const string PouredOfBatch = """
        select piece.act_id as actId, piece.number, 0 as isCoat
        from piece
        join batch on batch.id = piece.batch_id
        where batch.number = $number
          and piece.undone_id is null
        order by piece.number
        """;

    /// <summary>The pieces of which it was said that they are poured from this batch.</summary>
    public IReadOnlyList<TrailPiece> PouredFrom(int batch) =>
        [.. connection.Query<PieceRow>(PouredOfBatch, new { number = batch }).Select(row => row.From())];

    private const string EndsOf = """
        select piece.number, member.name as maker, staged.stage, act.happened_at as since, staged.words
        from piece
        join member on member.id = piece.maker_id
        join piece_event as staged on staged.id = (
            select max(line.id)
            from live_piece_event as line
            where line.piece_id = piece.id
              and line.stage is not null)
        join act on act.id = staged.act_id
        where piece.number in (select value from json_each($numbers))
          and piece.undone_id is null
        order by piece.number
        """;

    /// <summary>Whose these pieces are and what became of them, by number.</summary>
    public IReadOnlyList<TrailEnd> Ends(IEnumerable<int> numbers) =>
        [.. connection.Query<EndRow>(EndsOf, new { numbers = JsonSerializer.Serialize(numbers) })
            .Select(row => row.From())];

    private sealed record VesselRow(long? LotId, string? Label, long? Number)
    {
        public TrailVessel From() => new(LotId, Label, checked((int?)Number));
    }

    private sealed record LineRow(long ActId, long? Microlitres, long? Milligrams, long? Pieces, string Reason)
    {
        public TrailLine From()
        {
            var signed = new AmountColumns(Microlitres, Milligrams, Pieces);
            return new TrailLine(
                ActId, signed.Magnitude().Known(), signed.Whole > 0, StockRecords.Reasons.Read(Reason));
        }
    }

    // Settable, not positional: a column of a union has no declared type for a constructor to be matched by.
    private sealed record MadeRow
    {
        public long ActId { get; init; }

        public long? LotId { get; init; }

        public string? Label { get; init; }

        public long? Number { get; init; }

        public TrailVessel From() => new(LotId, Label, checked((int?)Number));
    }

    // Settable likewise: a comparison.
    private sealed record PieceRow
    {
        public long ActId { get; init; }

        public long Number { get; init; }

        public bool IsCoat { get; init; }

        public TrailPiece From() => new(ActId, checked((int)Number), IsCoat);
    }

    private sealed record EndRow(long Number, string Maker, string Stage, long Since, string? Words)
    {
        public TrailEnd From() => new(
            checked((int)Number), Maker, Stages.Words.Read(Stage), Booked.Moment(Since), Words);
    }
}
