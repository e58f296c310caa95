using StudioBot.Chat.Recording;
using StudioBot.Craft;
using StudioBot.Craft.Air;
using StudioBot.Craft.Coats;
using StudioBot.Craft.Practice;
using StudioBot.Records;
using StudioBot.Records.Pieces;
using StudioBot.Records.Rooms;

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

    /// <summary>How long its resin takes here, against its sheet.</summary>
    public CurePace Pace { get; init; } = CurePace.OfSheet;

    /// <summary>When the next coat still bonds.</summary>
    public Finding<RecoatWindow> Window => RecoatWindow.Of(Pace.Over(Times(System)), LaidAt, Film);

    /// <summary>When it may be moved, and when it is done.</summary>
    public Finding<CureSchedule> Cure => CureSchedule.Of(Pace.Over(Times(System)), LaidAt, Film);

    /// <summary>That window, be it with a caution; none where nobody can say.</summary>
    public RecoatWindow? KnownWindow => Known(Window);

    /// <summary>That schedule, be it with a caution; none where nobody can say.</summary>
    public CureSchedule? KnownCure => Known(Cure);

    /// <summary>The last coat of this piece as it stands in the records now; none where none is on record.</summary>
    public static CoatReckoning? Of(int piece, StudioView view, TradePractice practice) =>
        Of([piece], view, practice).SingleOrDefault();

    /// <summary>The last coats of these pieces as they stand in the records now; without those that have none.
    /// </summary>
    /// <param name="pieces">Their numbers.</param>
    /// <param name="view">The records.</param>
    /// <param name="practice">The resins.</param>
    /// <param name="paces">How long resins take here, where that was read already.</param>
    public static IReadOnlyList<CoatReckoning> Of(
        IReadOnlyCollection<int> pieces, StudioView view, TradePractice practice, CurePaces? paces = null)
    {
        List<Laid> coats = [.. view.Pieces.Lines(pieces).GroupBy(line => line.Number)
            .Select(own => Laid.Last([.. own]))
            .OfType<Laid>()];
        if (coats.Count == 0)
        {
            return [];
        }

        var readings = view.Rooms.Readings(coats.Min(coat => coat.Line.At) - OldestAir);
        var rooms = PiecePlace.Rooms(view);
        paces ??= new CurePaces(view, practice);
        return [.. coats.Select(coat => Of(coat, readings, rooms, practice))
            .Select(coat => coat with { Pace = paces.Of(coat.System) })];
    }

    /// <summary>The last coat among these lines of one piece, by its sheet alone; none where none is among them.
    /// </summary>
    public static CoatReckoning? Of(
        IReadOnlyList<PieceLine> lines,
        IReadOnlyList<RoomReading> readings,
        Func<string?, string?> rooms,
        TradePractice practice) =>
        Laid.Last(lines) is { } last ? Of(last, readings, rooms, practice) : null;

    private static CoatReckoning Of(
        Laid last, IReadOnlyList<RoomReading> readings, Func<string?, string?> rooms, TradePractice practice)
    {
        var (laid, coat) = (last.Line.At, last.Coat);
        var film = FilmOf(last, readings, rooms);
        return new CoatReckoning(
            last.Line.Number,
            last.Before.Count(line => line.What is PieceEvent.Coated) + 1,
            coat,
            laid,
            practice.Resins.FirstOrDefault(one => one.Ratio.Value.Equals(coat.Ratio)) ?? practice.UsualResin,
            film.Count > 0 ? film : [new FilmReading(laid, RoomAir.Assumed.Temperature)],
            film.Count == 0,
            last.Since.Any(line => line.What is PieceEvent.Failed),
            last.Since.Any(line => line.What is PieceEvent.Sanded));
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
        Laid last, IReadOnlyList<RoomReading> readings, Func<string?, string?> rooms)
    {
        var (laid, air) = (last.Line.At, last.Coat.Air);
        List<FilmReading> film = air is null ? [] : [new FilmReading(laid, air.Temperature)];
        var stays = Stays(last, rooms);
        for (var i = 0; i < stays.Count; i++)
        {
            var (from, room) = stays[i];
            var until = i + 1 < stays.Count ? stays[i + 1].From : DateTimeOffset.MaxValue;
            var here = readings
                .Where(reading => reading.At >= laid - OldestAir && reading.Room == room && reading.At < until)
                .ToList();
            if (here.LastOrDefault(reading => reading.At <= from) is { } before && (i > 0 || air is null))
            {
                film.Add(new FilmReading(from, before.Temperature));
            }

            film.AddRange(here.Where(reading => reading.At > from)
                .Select(reading => new FilmReading(reading.At, reading.Temperature)));
        }

        return film;
    }

    private static List<(DateTimeOffset From, string? Room)> Stays(Laid last, Func<string?, string?> rooms)
    {
        var laid = last.Line.At;
        var moves = last.Before.Concat(last.Since).Where(line => line.What is PieceEvent.Shelved)
            .Select(line => (line.At, ((PieceEvent.Shelved)line.What).Shelf))
            .ToList();
        List<(DateTimeOffset, string?)> stays = [(laid, rooms(moves.LastOrDefault(move => move.At <= laid).Shelf))];
        stays.AddRange(moves.Where(move => move.At > laid).Select(move => (move.At, rooms(move.Shelf))));
        return stays;
    }

    private static T? Known<T>(Finding<T> finding)
        where T : class => finding switch
        {
            Finding<T>.Found found => found.Value,
            Finding<T>.Cautioned cautioned => cautioned.Value,
            _ => null,
        };

    // The last coat of a piece among its lines.
    private sealed record Laid(
        PieceLine Line, Coat Coat, IReadOnlyList<PieceLine> Before, IReadOnlyList<PieceLine> Since)
    {
        public static Laid? Last(IReadOnlyList<PieceLine> lines)
        {
            for (var at = lines.Count - 1; at >= 0; at--)
            {
                if (lines[at].What is PieceEvent.Coated { Coat: var coat })
                {
                    return new Laid(lines[at], coat, [.. lines.Take(at)], [.. lines.Skip(at + 1)]);
                }
            }

            return null;
        }
    }
}
