using StudioBot.Craft.Drying;
using StudioBot.Craft.Practice;
using StudioBot.Craft.Units;
using StudioBot.Records;
using StudioBot.Records.Pieces;

namespace StudioBot.Chat.Drying;

/// <summary>
/// The ready days of a studio's pieces at one moment. All records are read once, and what the finished pieces taught
/// is worked out once, however many pieces are asked for. For one thread.
/// </summary>
public sealed class PieceReckoning
{
    // Lessons further back are forgotten.
    private const int Remembered = 50;

    // A bare panel tells the dry mass only with the wet one, weighed once the dripping has stopped (common practice).
    private static readonly TimeSpan Fresh = TimeSpan.FromHours(2);
    private const double LostInAnHour = 0.05;

    // From two weighings in whole grams on: a kitchen scale, and not one that happened to end in zero.
    private const int TellTale = 2;
    private static readonly Mass Gram = Mass.FromGrams(1);

    private readonly Dictionary<int, Piece> _pieces;
    private readonly ILookup<int, PieceLine> _lines;
    private readonly RoomAirs _rooms;
    private readonly PieceFilms _films;
    private readonly PieceMixes _mixes;
    private readonly Mass _division;
    private readonly DateTimeOffset _now;
    private readonly Lazy<IReadOnlyList<PastDrying>> _past;
    private readonly Lazy<StudioDrying> _taught;
    private readonly Dictionary<int, PieceOutlook> _outlooks = [];

    /// <summary>Reads what there is.</summary>
    /// <param name="view">The records; not looked at again.</param>
    /// <param name="practice">What the trade assumes.</param>
    /// <param name="now">The moment to reckon for.</param>
    public PieceReckoning(StudioView view, TradePractice practice, DateTimeOffset now)
    {
        _now = now;
        _division = practice.Pours.Tools.ScaleDivision.Value;
        _pieces = view.Pieces.All().ToDictionary(piece => piece.Number);
        _lines = view.Pieces.Lines().ToLookup(line => line.Number);
        _films = new PieceFilms(view, practice);
        _mixes = new PieceMixes(view, practice);
        List<Piece> taught = [.. LastFinished()];
        var first = _pieces.Values.Where(piece => piece.Stage == Stage.Drying).Concat(taught)
            .Select(piece => piece.PouredAt)
            .DefaultIfEmpty(now)
            .Min();
        _rooms = new RoomAirs(view, first, now);
        _past = new Lazy<IReadOnlyList<PastDrying>>(() => [.. taught.Select(Past).OfType<PastDrying>()]);
        _taught = new Lazy<StudioDrying>(() => StudioDrying.From([.. _past.Value.Select(one => one.Lesson)]));
    }

    /// <summary>The last 50 pieces that somebody called dry or coated, the longest ago first.</summary>
    internal IReadOnlyList<PastDrying> Finished => _past.Value;

    /// <summary>What the studio's finished pieces have taught: the last 50 that somebody called dry or coated.
    /// </summary>
    public StudioDrying Taught => _taught.Value;

    /// <summary>All pieces, by number.</summary>
    public IReadOnlyList<Piece> Pieces => [.. _pieces.Values];

    /// <summary>The outlook of every piece that dries, by number.</summary>
    public IReadOnlyList<PieceOutlook> Drying() =>
        [.. _pieces.Values.Where(piece => piece.Stage == Stage.Drying).Select(Of)];

    /// <summary>The outlook of this piece; none where it does not dry any more, or there is no such piece.</summary>
    public PieceOutlook? Of(int number) =>
        _pieces.GetValueOrDefault(number) is { Stage: Stage.Drying } piece ? Of(piece) : null;

    /// <summary>What happened to this piece and holds, by the moment it is about.</summary>
    public IEnumerable<PieceLine> Lines(int number) => _lines[number];

    /// <summary>The room this piece lies in; none in a studio without rooms.</summary>
    public string? RoomOf(Piece piece) => _rooms.Of(piece.Shelf);

    /// <summary>How long this piece had dried at a moment up to now, in equivalent time; nothing before its pour.
    /// </summary>
    public TimeSpan Dried(Piece piece, DateTimeOffset moment) => Stay(piece).Dried(moment);

    private PieceOutlook Of(Piece piece)
    {
        if (!_outlooks.TryGetValue(piece.Number, out var outlook))
        {
            _outlooks[piece.Number] = outlook = Worked(piece);
        }

        return outlook;
    }

    private PieceOutlook Worked(Piece piece)
    {
        var stay = Stay(piece);
        var (known, grounds) = Known(piece, stay, _now);
        var elapsed = stay.Dried(_now);
        var pace = _rooms.Pace(stay.Room);
        var air = _rooms.Now(stay.Room);
        var shift = Taught.For(known.Film, known.Room);
        return new PieceOutlook(
            piece, _now, known, elapsed, pace, shift, ReadyOutlook.Of(known, elapsed, pace, air, shift))
        {
            FilmGrounds = grounds,
            Room = stay.Room,
            Change = Taught.Change,
            Air = air,
            QuietUntil = _lines[piece.Number].Select(line => line.What).OfType<PieceEvent.NotYet>().LastOrDefault()
                is { Until: { } until } && until > _now ? until : null,
        };
    }

    private PieceStay Stay(Piece piece) => new(piece, [.. _lines[piece.Number]], _rooms);

    private (DryingPiece Piece, FilmGrounds Grounds) Known(Piece piece, PieceStay stay, DateTimeOffset until)
    {
        List<PieceLine> lines = [.. _lines[piece.Number]];
        var (film, grounds) = _films.Of(piece, lines);
        var mix = _mixes.Of(piece);
        var laid = _films.On(piece, film);
        var water = laid * mix.Water;
        var weighed = lines
            .Where(line => line.What is PieceEvent.Weighed && line.At >= piece.PouredAt)
            .Select(line => (line.At, ((PieceEvent.Weighed)line.What).Mass))
            .ToList();
        return (new DryingPiece(film, water)
        {
            Room = stay.Mostly(until),
            Words = PieceSayings.Of(lines, stay),
            Weighings = [.. weighed.Select(one => new Weighing(stay.Dried(one.At), one.Mass))],
            Deviation = WeighingNoise.Of(Division([.. weighed.Select(one => one.Mass)]), laid * mix.Solids),
            Dry = Dry(piece, lines, weighed, mix, water),
        }, grounds);
    }

    // Finer than the trade's scale nobody is believed to weigh; coarser shows in the weighings.
    private Mass Division(List<Mass> weighed) =>
        _division < Gram && weighed.Count >= TellTale && weighed.TrueForAll(mass => IsWhole(mass.Grams))
            ? Gram
            : _division;

    private static bool IsWhole(double grams) => Math.Abs(grams - Math.Round(grams)) < 1e-6;

    private static DryMass? Dry(
        Piece piece,
        List<PieceLine> lines,
        List<(DateTimeOffset At, Mass Mass)> weighed,
        PieceMix mix,
        Mass water)
    {
        var bare = lines.Select(line => line.What).OfType<PieceEvent.Bare>().LastOrDefault();
        if (bare is null || weighed is not [var (at, mass), ..] || at - piece.PouredAt > Fresh || mass < bare.Mass)
        {
            return null;
        }

        var wet = mass + water * (LostInAnHour * (at - piece.PouredAt).TotalHours);
        return DryMass.FromBare(bare.Mass, wet, mix.NonVolatile);
    }

    private PastDrying? Past(Piece piece)
    {
        var stay = Stay(piece);
        // A coat on a coat says nothing of the paint.
        var lines = _lines[piece.Number].ToList();
        var end = lines.Skip(lines.FindLastIndex(line => line.What is PieceEvent.NotYet) + 1)
            .Concat(lines)
            .First(line => line.What is PieceEvent.Dry or PieceEvent.Coated).At;

        // Where it lies today, coated, is not where it dried.
        var known = Known(piece, stay, end).Piece;
        return known.Words.Count == 0 ? null : new PastDrying(piece, known, end, stay.Dried(end), new Lesson(known));
    }

    // Those that somebody called dry or coated and that dry no more, the longest ago first.
    private IEnumerable<Piece> LastFinished() => _pieces.Values
        .Where(piece => piece.Stage != Stage.Drying)
        .Select(piece => (Piece: piece, Last: _lines[piece.Number].LastOrDefault(line =>
            line.What is PieceEvent.Dry or PieceEvent.Coated)))
        .Where(pair => pair.Last is not null)
        .OrderBy(pair => pair.Last!.At)
        .TakeLast(Remembered)
        .Select(pair => pair.Piece);
}
