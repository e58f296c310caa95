using StudioBot.Chat.Asking;
using StudioBot.Chat.Drying;
using StudioBot.Craft;
using StudioBot.Craft.Coats;
using StudioBot.Craft.Practice;
using StudioBot.Craft.Units;
using StudioBot.Records;
using StudioBot.Records.Pieces;

namespace StudioBot.Chat.Coats;

/// <summary>The recoat windows and cures of a studio's coats: the sheet's hours along the temperatures of the room.
/// </summary>
/// <remarks>The film is taken to be as warm as its room (common practice); the product's sheet comes first.</remarks>
public sealed class CoatReckoning
{
    private static readonly TimeSpan Before = TimeSpan.FromDays(1);

    // Where nobody has read a room: what the drying clock assumes as well.
    private static readonly Temperature Unread = Temperature.FromCelsius(20);

    private readonly StudioView _view;
    private readonly TradePractice _practice;
    private readonly DateTimeOffset _now;
    private readonly Dictionary<int, CoatOutlook?> _known = [];

    /// <summary>A look at this moment.</summary>
    /// <param name="view">The records.</param>
    /// <param name="practice">What the trade assumes.</param>
    /// <param name="now">The moment; readings behind it do not count.</param>
    public CoatReckoning(StudioView view, TradePractice practice, DateTimeOffset now) =>
        (_view, _practice, _now) = (view, practice, now);

    /// <summary>The last coat of this piece and what becomes of it; none where it has none that stands: it failed, or was
    /// sanded.</summary>
    public CoatOutlook? Of(int number)
    {
        if (!_known.TryGetValue(number, out var outlook))
        {
            _known[number] = outlook = _view.Pieces.Find(number) is { Stage: Stage.Coated } piece ? Reckoned(piece) : null;
        }

        return outlook;
    }

    /// <summary>The sheet's hours of a system.</summary>
    public static CureTimes TimesOf(ResinSystem system) => new(
        system.RecoatOpens.Value.Early,
        system.RecoatOpens.Value.Late,
        system.RecoatCloses.Value.Early,
        system.RecoatCloses.Value.Late,
        system.Handling.Value,
        system.FullCure.Value,
        system.TimesAt.Value);

    private CoatOutlook? Reckoned(Piece piece)
    {
        var lines = _view.Pieces.Lines(piece.Number);
        var coats = lines.Where(line => line.What is PieceEvent.Coated).ToList();
        if (coats is not [.., var last]
            || lines.Any(line => line.What is PieceEvent.Failed or PieceEvent.Sanded && line.At >= last.At && line.ActId > last.ActId))
        {
            return null;
        }

        var coat = ((PieceEvent.Coated)last.What).Coat;
        var system = SystemOf(coat);
        var film = FilmOf(piece, last.At, coat);
        var times = TimesOf(system);
        var (window, windowCaution) = Taken(RecoatWindow.Of(times, last.At, film));
        var (cure, cureCaution) = Taken(CureSchedule.Of(times, last.At, film));
        var (full, fullCaution) = cure is null ? (null, null) : TakenMoment(cure.FullCure);
        return new CoatOutlook(piece, last.ActId, last.At, coat, coats.Count)
        {
            Window = window,
            Handling = cure?.HandlingBy,
            FullCure = full,
            Caution = windowCaution ?? cureCaution ?? fullCaution,
        };
    }

    private ResinSystem SystemOf(Coat coat) => coat.Ratio is { } ratio
        ? _practice.Resins.FirstOrDefault(one => one.Ratio.Value.Equals(ratio)) ?? _practice.UsualResin
        : _practice.UsualResin;

    // The room's readings from the coat on; the last holds on, and so does the air at the coat before the first.
    private List<FilmReading> FilmOf(Piece piece, DateTimeOffset coatedAt, Coat coat)
    {
        var room = RoomOf(piece);
        var current = _view.Rooms.Current().Where(one => one.Room == room);
        List<FilmReading> film = [.. current.Concat(_view.Rooms.Readings(coatedAt - Before).Where(one => one.Room == room))
            .Where(one => one.At <= _now && (one.At > coatedAt || coat.Air is null))
            .DistinctBy(one => one.At)
            .Select(one => new FilmReading(one.At, one.Temperature))];
        if (coat.Air is { } air)
        {
            film.Add(new FilmReading(coatedAt, air.Temperature));
        }

        return film.Count > 0 ? film : [new FilmReading(coatedAt, Unread)];
    }

    private string? RoomOf(Piece piece) => _view.Rooms.Shelves()
            .FirstOrDefault(shelf => shelf.Label.Equals(piece.Shelf, StringComparison.OrdinalIgnoreCase))?.Room
        ?? _view.Rooms.All().FirstOrDefault()?.Name;

    private static (T? Value, string? Caution) Taken<T>(Finding<T> finding)
        where T : class => finding switch
    {
        Finding<T>.Found found => (found.Value, null),
        Finding<T>.Cautioned cautioned => (cautioned.Value, cautioned.Caution),
        Finding<T>.None none => (null, $"{none.Why}: {none.Instead}"),
        _ => (null, null),
    };

    private static (DateTimeOffset? Value, string? Caution) TakenMoment(Finding<DateTimeOffset> finding) => finding switch
    {
        Finding<DateTimeOffset>.Found found => (found.Value, null),
        Finding<DateTimeOffset>.Cautioned cautioned => (cautioned.Value, cautioned.Caution),
        Finding<DateTimeOffset>.None none => (null, $"{none.Why}: {none.Instead}"),
        _ => (null, null),
    };
}
