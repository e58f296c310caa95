using System.Text.Json;
using Dapper;
using Microsoft.Data.Sqlite;
using StudioBot.Craft.Air;
using StudioBot.Craft.Mixing;
using StudioBot.Craft.Units;
using StudioBot.Records.Acts;

namespace StudioBot.Records.Pieces;

/// <summary>The lines of the pieces' book.</summary>
internal sealed class PieceBook(SqliteConnection connection)
{
    private static readonly StoredWords<RatioBy> RatioBys = new((RatioBy.Volume, "volume"), (RatioBy.Mass, "mass"));

    private const string NewLine = """
        insert into piece_event (
            act_id, piece_id, kind, stage, microlitres, milligrams, cents, share_percent, until_at, words, file_id,
            shelf_id)
        values (
            $act, $piece, $kind, $stage, $microlitres, $milligrams, $cents, $share, $until, $words, $file,
            (select id from shelf where label = $shelf))
        returning id
        """;

    private const string NewCoat = """
        insert into coat (
            event_id, a_microlitres, b_microlitres, ratio_a, ratio_b, ratio_by, film_micrometres, celsius,
            humidity_percent)
        values ($id, $a, $b, $ratioA, $ratioB, $ratioBy, $film, $celsius, $humidity)
        """;

    private const string NewCoatLot = """
        insert into coat_lot (event_id, lot_id)
        values ($id, $lot)
        """;

    public void Append(long piece, PieceEvent what, Act act)
    {
        var columns = PieceEventColumns.Of(what);
        var id = connection.ExecuteScalar<long>(NewLine, new
        {
            act = act.Id,
            piece,
            kind = columns.Kind,
            stage = columns.Stage,
            microlitres = columns.Microlitres,
            milligrams = columns.Milligrams,
            cents = columns.Cents,
            share = columns.SharePercent,
            until = columns.UntilAt,
            words = columns.Words,
            file = columns.FileId,
            shelf = columns.Shelf,
        });
        if (what is PieceEvent.Coated { Coat: var coat })
        {
            Append(id, coat);
        }
    }

    private void Append(long id, Coat coat)
    {
        connection.Execute(NewCoat, new
        {
            id,
            a = Booked.Microlitres(coat.A),
            b = Booked.Microlitres(coat.B),
            ratioA = coat.Ratio?.Parts[0],
            ratioB = coat.Ratio?.Parts[1],
            ratioBy = coat.Ratio is { } ratio ? RatioBys.Of(ratio.By) : null,
            film = coat.Film is { } film ? Booked.Micrometres(film) : (long?)null,
            celsius = coat.Air?.Temperature.Celsius,
            humidity = coat.Air?.Humidity.Percent,
        });
        connection.Execute(NewCoatLot, coat.LotIds.Select(lot => new { id, lot }));
    }

    private const string Lines = """
        select line.id, piece.number, line.act_id as actId, act.happened_at as happenedAt, act.author_id as authorId,
               act.for_id as forId, line.kind, line.stage, line.microlitres, line.milligrams, line.cents,
               line.share_percent as sharePercent, line.until_at as untilAt, line.words, line.file_id as fileId,
               shelf.label as shelf
        from live_piece_event as line
        join piece on piece.id = line.piece_id
        join act on act.id = line.act_id
        left join shelf on shelf.id = line.shelf_id

        """;

    private const string InOrder = "order by act.happened_at, line.id";

    private const string Coats = """
        select coat.event_id as eventId, coat.a_microlitres as aMicrolitres, coat.b_microlitres as bMicrolitres,
               coat.ratio_a as ratioA, coat.ratio_b as ratioB, coat.ratio_by as ratioBy,
               coat.film_micrometres as filmMicrometres, coat.celsius, coat.humidity_percent as humidityPercent
        from coat
        join live_piece_event as line on line.id = coat.event_id
        join piece on piece.id = line.piece_id
        join act on act.id = line.act_id

        """;

    private const string CoatLots = """
        select share.event_id as eventId, share.lot_id as lotId
        from coat_lot as share
        join live_piece_event as line on line.id = share.event_id
        join piece on piece.id = line.piece_id
        join act on act.id = line.act_id

        """;

    private const string ByLot = " order by share.event_id, share.lot_id";

    // Each its own query: one for all that also finds some would read all.
    private const string OfNumber = "where piece.number = $number and piece.undone_id is null ";
    private const string OfNumbers =
        "where piece.number in (select value from json_each($numbers)) and piece.undone_id is null ";

    private const string Between = "where act.happened_at >= $from and act.happened_at < $until ";

    public IReadOnlyList<PieceLine> All() => Read("", new { });

    public IReadOnlyList<PieceLine> Of(int number) => Read(OfNumber, new { number });

    public IReadOnlyList<PieceLine> Of(IEnumerable<int> numbers) =>
        Read(OfNumbers, new { numbers = JsonSerializer.Serialize(numbers) });

    public IReadOnlyList<PieceLine> Within(long from, long until) => Read(Between, new { from, until });

    private IReadOnlyList<PieceLine> Read(string which, object parameters)
    {
        var lots = connection.Query<CoatLotRow>(CoatLots + which + ByLot, parameters)
            .ToLookup(row => row.EventId, row => row.LotId);
        var coats = connection.Query<CoatRow>(Coats + which, parameters)
            .ToDictionary(row => row.EventId, row => row.From([.. lots[row.EventId]]));
        return [.. connection.Query<LineRow>(Lines + which + InOrder, parameters).Select(row => row.From(coats))];
    }

    private sealed record LineRow(
        long Id,
        long Number,
        long ActId,
        long HappenedAt,
        long? AuthorId,
        long? ForId,
        string Kind,
        string? Stage,
        long? Microlitres,
        long? Milligrams,
        long? Cents,
        double? SharePercent,
        long? UntilAt,
        string? Words,
        string? FileId,
        string? Shelf)
    {
        public PieceLine From(Dictionary<long, Coat> coats) => new(
            checked((int)Number),
            ActId,
            Booked.Moment(HappenedAt),
            ForId ?? AuthorId,
            new PieceEventColumns(Kind)
            {
                Stage = Stage,
                Microlitres = Microlitres,
                Milligrams = Milligrams,
                Cents = Cents,
                SharePercent = SharePercent,
                UntilAt = UntilAt,
                Words = Words,
                FileId = FileId,
                Shelf = Shelf,
            }.From(() => coats[Id]));
    }

    private sealed record CoatLotRow(long EventId, long LotId);

    private sealed record CoatRow(
        long EventId,
        long AMicrolitres,
        long BMicrolitres,
        double? RatioA,
        double? RatioB,
        string? RatioBy,
        long? FilmMicrometres,
        double? Celsius,
        double? HumidityPercent)
    {
        public Coat From(IReadOnlyList<long> lots) => new(Booked.Volume(AMicrolitres), Booked.Volume(BMicrolitres))
        {
            Ratio = RatioA is { } a && RatioB is { } b && RatioBy is { } by
                ? new MixRatio([a, b], RatioBys.Read(by))
                : null,
            Film = FilmMicrometres is { } film ? Booked.Length(film) : null,
            Air = Celsius is { } celsius && HumidityPercent is { } percent
                ? new RoomAir(Temperature.FromCelsius(celsius), RelativeHumidity.FromPercent(percent))
                : null,
            LotIds = lots,
        };
    }
}
