using StudioBot.Chat.Recording;
using StudioBot.Craft;
using StudioBot.Craft.Air;
using StudioBot.Craft.Coats;
using StudioBot.Craft.Practice;
using StudioBot.Records;
using StudioBot.Records.Pieces;

namespace StudioBot.Chat.Coats;

/// <summary>The last coat of a piece and its hours: from its resin's times and the air it lay in since.</summary>
/// <param name="Piece">The number of the piece.</param>
/// <param name="Number">Which coat it is, from 1.</param>
/// <param name="Coat">The coat as it was taken.</param>
/// <param name="LaidAt">When it was laid.</param>
/// <param name="System">Its resin: of the ratio that was asked for, else the usual one.</param>
/// <param name="Film">How warm the film was: the air it was laid in, then that of the rooms it lay in since.</param>
/// <param name="IsAssumed">Nobody read that air: the film's temperature is assumed.</param>
/// <param name="HasFailed">It failed.</param>
/// <param name="IsSanded">It was sanded since: the piece takes another coat at any time.</param>
internal sealed record CoatReckoning(
    int Piece,
    int Number,
    Coat Coat,
    DateTimeOffset LaidAt,
    ResinSystem System,
    IReadOnlyList<FilmReading> Film,
    bool IsAssumed,
    bool HasFailed,
    bool IsSanded)
{
    /// <summary>A reading older than this says nothing of the air a coat was laid in.</summary>
    public static readonly TimeSpan OldestAir = TimeSpan.FromDays(60);

    /// <summary>When the next coat still bonds.</summary>
    public Finding<RecoatWindow> Window => RecoatWindow.Of(Times(System), LaidAt, Film);

    /// <summary>When it may be moved, and when it is done.</summary>
    public Finding<CureSchedule> Cure => CureSchedule.Of(Times(System), LaidAt, Film);

    /// <summary>That window, be it with a caution; none where nobody can say.</summary>
    public RecoatWindow? KnownWindow => Known(Window);

    /// <summary>That schedule, be it with a caution; none where nobody can say.</summary>
    public CureSchedule? KnownCure => Known(Cure);

    /// <summary>The last coat of this piece as it stands in the records now; none where none is on record.</summary>
    public static CoatReckoning? Of(int piece, StudioView view, TradePractice practice)
    {
        var lines = view.Pieces.Lines(piece);
        var at = Enumerable.Range(0, lines.Count).LastOrDefault(i => lines[i].What is PieceEvent.Coated, -1);
        if (at < 0)
        {
            return null;
        }

        var (laid, coat) = (lines[at].At, ((PieceEvent.Coated)lines[at].What).Coat);
        var since = lines.Skip(at + 1).Select(line => line.What).ToList();
        var film = FilmOf(lines, coat, laid, view);
        return new CoatReckoning(
            piece,
            lines.Take(at + 1).Count(line => line.What is PieceEvent.Coated),
            coat,
            laid,
            practice.Resins.FirstOrDefault(one => one.Ratio.Value.Equals(coat.Ratio)) ?? practice.UsualResin,
            film.Count > 0 ? film : [new FilmReading(laid, RoomAir.Assumed.Temperature)],
            film.Count == 0,
            since.Any(what => what is PieceEvent.Failed),
            since.Any(what => what is PieceEvent.Sanded));
    }

    /// <summary>What a resin's sheet says of one coat's hours.</summary>
    public static CureTimes Times(ResinSystem system) => new(
        system.RecoatOpens.Value.Early,
        system.RecoatOpens.Value.Late,
        system.RecoatCloses.Value.Early,
        system.RecoatCloses.Value.Late,
        system.Handling.Value,
        system.FullCure.Value,
        system.TimesAt.Value);

    // Room by room as the piece lay: the newest reading before it came there, then those while it lay there.
    private static List<FilmReading> FilmOf(
        IReadOnlyList<PieceLine> lines, Coat coat, DateTimeOffset laid, StudioView view)
    {
        List<FilmReading> film = coat.Air is { } air ? [new FilmReading(laid, air.Temperature)] : [];
        var readings = view.Rooms.Readings(laid - OldestAir);
        var stays = Stays(lines, laid, view);
        for (var i = 0; i < stays.Count; i++)
        {
            var (from, room) = stays[i];
            var until = i + 1 < stays.Count ? stays[i + 1].From : DateTimeOffset.MaxValue;
            var here = readings.Where(reading => reading.Room == room && reading.At < until).ToList();
            if (here.LastOrDefault(reading => reading.At <= from) is { } before && (i > 0 || coat.Air is null))
            {
                film.Add(new FilmReading(from, before.Temperature));
            }

            film.AddRange(here.Where(reading => reading.At > from)
                .Select(reading => new FilmReading(reading.At, reading.Temperature)));
        }

        return film;
    }

    private static List<(DateTimeOffset From, string? Room)> Stays(
        IReadOnlyList<PieceLine> lines, DateTimeOffset laid, StudioView view)
    {
        var moves = lines.Where(line => line.What is PieceEvent.Shelved)
            .Select(line => (line.At, ((PieceEvent.Shelved)line.What).Shelf))
            .ToList();
        var first = moves.LastOrDefault(move => move.At <= laid).Shelf;
        List<(DateTimeOffset, string?)> stays = [(laid, PiecePlace.Room(first, view))];
        stays.AddRange(moves.Where(move => move.At > laid)
            .Select(move => (move.At, PiecePlace.Room(move.Shelf, view))));
        return stays;
    }

    private static T? Known<T>(Finding<T> finding)
        where T : class => finding switch
    {
        Finding<T>.Found found => found.Value,
        Finding<T>.Cautioned cautioned => cautioned.Value,
        _ => null,
    };
}
