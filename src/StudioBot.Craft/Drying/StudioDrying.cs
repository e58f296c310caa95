using StudioBot.Craft.Pours;
using StudioBot.Craft.Units;

namespace StudioBot.Craft.Drying;

/// <summary>
/// What a studio's finished pieces have taught of its drying: how slow it is as a whole, how the time grows with the
/// film, how much each room differs from what its air says (draught, a fan, a hygrometer that is off), and whether the
/// last pieces dry otherwise than those before.
/// </summary>
/// <remarks>
/// ln X = ln of common practice's time + b + e·ln(h/2.5 mm) + r of the room + c of the last pieces + 0.45·ε, each
/// coefficient shrunk towards zero. The pieces' likelihoods are not normal (a word only bounds a time), so each is
/// replaced by the normal one that gives the same mean and variance beside all the others: expectation propagation,
/// Minka, UAI 2001. The deviations are common practice; of b and r together it is the one of an untaught studio.
/// </remarks>
public sealed class StudioDrying
{
    private const int Remembered = 50;
    private const int Sweeps = 20;          // enough: four or five do
    private const double Agreed = 1e-3;     // of a lesson's precision and pull

    private const double RoomDeviation = 0.15;
    private const double PowerDeviation = 0.20;
    private const double ChangeDeviation = 0.40;
    private static readonly double OwnDeviation = Math.Sqrt(
        StudioShift.UsualDeviation * StudioShift.UsualDeviation - RoomDeviation * RoomDeviation);

    // A piece that fits this badly is a slip, three and a half deviations off; a change is told from so many on.
    private const double SlipFit = 2.2e-3;
    private const double ChangeFrom = 2.6;
    private const int FewestBefore = 6;
    private static readonly int[] LastPieces = [6, 12, 25];

    // In this order; behind them one for each room.
    private const int Own = 0;
    private const int Power = 1;
    private const int Last = 2;
    private const int FirstRoom = 3;

    private readonly LinearBelief _belief;
    private readonly List<string> _rooms;
    private readonly double[] _fits;
    private readonly (double Mean, double Deviation) _change;

    private StudioDrying(IReadOnlyList<Lesson> lessons, int last, int leftOut)
    {
        var rooms = lessons.GroupBy(one => one.Room ?? "").OrderByDescending(room => room.Count()).ToList();
        _rooms = [.. rooms.Select(room => room.Key)];
        double[] deviations = [OwnDeviation, PowerDeviation, ChangeDeviation, .. rooms.Select(_ => RoomDeviation)];
        _belief = new LinearBelief(new double[deviations.Length], deviations);
        _fits = Settle(lessons, last);
        _change = Of(Last);
        Pieces = lessons.Count;
        LeftOut = leftOut;
        Rooms = [.. rooms.Select((room, at) => (room.Key, room.Count(), Math.Exp(Of(FirstRoom + at).Mean)))
            .Where(room => room.Key.Length > 0)];
        Change = last > 0 ? new DryingChange(lessons[^last], last, Math.Exp(_change.Mean)) : null;
    }

    /// <summary>A studio that has not finished a piece yet.</summary>
    public static StudioDrying Untaught { get; } = new([], 0, 0);

    /// <summary>How many finished pieces taught it.</summary>
    public int Pieces { get; }

    /// <summary>How many were left out, as slips of the day or of the film.</summary>
    public int LeftOut { get; }

    /// <summary>The time of a usual film here over common practice's, rooms aside.</summary>
    public double Factor => Math.Exp(Of(Own).Mean);

    /// <summary>The power with which the time grows with the film, 1.75 by common practice.</summary>
    public double Exponent => ScaledTime.ReadyForResin.Exponent + Of(Power).Mean;

    /// <summary>The rooms pieces dried in, the one with most first: how many, and their time over what the room's air
    /// says. Below 1 is a room with a draught.</summary>
    public IReadOnlyList<(string Room, int Pieces, double Factor)> Rooms { get; }

    /// <summary>From which piece on they dry otherwise; none where none is seen.</summary>
    public DryingChange? Change { get; }

    /// <summary>What the finished pieces teach, oldest first; the last 50 count, slips left out.</summary>
    public static StudioDrying From(IReadOnlyList<Lesson> lessons)
    {
        List<Lesson> possible = [.. lessons.Where(one => one.Film >= Film.Thinnest && one.Film <= Film.Thickest)];
        List<Lesson> used, slips;
        StudioDrying steady;
        do
        {
            used = [.. possible.TakeLast(Remembered)];
            steady = new StudioDrying(used, 0, lessons.Count - possible.Count);
            slips = [.. used.Where((_, at) => steady._fits[at] < SlipFit)];
        }
        while (possible.RemoveAll(slips.Contains) > 0);

        return LastPieces.Where(last => used.Count - last >= FewestBefore)
            .Select(last => new StudioDrying(used, last, steady.LeftOut))
            .Where(one => one.Clearness >= ChangeFrom)
            .MaxBy(one => one.Clearness) ?? steady;
    }

    /// <summary>What is to be expected of a piece that dries now.</summary>
    /// <param name="film">How thick it was laid.</param>
    /// <param name="room">The room it dries in; none where that is not known.</param>
    public StudioShift For(Length film, string? room)
    {
        var (mean, variance) = _belief.Of(Weights(film, room, Change is not null));
        return new StudioShift(
            mean, Math.Sqrt(variance + (IsKnown(room) ? 0 : RoomDeviation * RoomDeviation)), Pieces);
    }

    private double Clearness => Math.Abs(_change.Mean) / _change.Deviation;

    private bool IsKnown(string? room) => _rooms.Contains(room ?? "");

    private double[] Weights(Length film, string? room, bool isLast)
    {
        var weights = new double[FirstRoom + _rooms.Count];
        weights[Own] = 1;
        weights[Power] = Math.Log(film / ScaledTime.ReadyForResin.Film);
        weights[Last] = isLast ? 1 : 0;
        if (IsKnown(room))
        {
            weights[FirstRoom + _rooms.IndexOf(room ?? "")] = 1;
        }

        return weights;
    }

    private (double Mean, double Deviation) Of(int coefficient)
    {
        var weights = new double[FirstRoom + _rooms.Count];
        weights[coefficient] = 1;
        var (mean, variance) = _belief.Of(weights);
        return (mean, Math.Sqrt(variance));
    }

    // Each lesson's stand-in is renewed beside all the others until they agree.
    private double[] Settle(IReadOnlyList<Lesson> lessons, int last)
    {
        List<double[]> weights =
            [.. lessons.Select((one, at) => Weights(one.Film, one.Room, at >= lessons.Count - last))];
        var taken = new (double Precision, double Pull)[lessons.Count];
        var fits = new double[lessons.Count];
        var moved = double.PositiveInfinity;
        for (var sweep = 0; sweep < Sweeps && moved > Agreed; sweep++)
        {
            moved = 0;
            for (var i = 0; i < lessons.Count; i++)
            {
                var (mean, variance) = _belief.Of(weights[i]);
                var (precision, pull) = taken[i];
                var without = 1 / (1 / variance - precision);
                var (met, spread, fit) = lessons[i].Meet(without * (mean / variance - pull), without);
                var to = Math.Max(0, 1 / spread - 1 / without);
                var toPull = met * (to + 1 / without) - (mean / variance - pull);
                _belief.Add(weights[i], to - precision, toPull - pull);
                (taken[i], fits[i]) = ((to, toPull), fit);
                moved = Math.Max(moved, Math.Max(Math.Abs(to - precision), Math.Abs(toPull - pull)));
            }
        }

        return fits;
    }
}
