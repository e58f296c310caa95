using StudioBot.Craft.Air;

namespace StudioBot.Craft.Drying;

/// <summary>
/// A clock that runs as fast as its room dries: ∫ deficit/deficit of the reference room. A reading is carried forward
/// for at most 24 hours, then (and before the first) the mean of all readings stands in; at 0.05 kPa or less it
/// stands still.
/// </summary>
/// <remarks>Common practice for the carrying; moving air is not in it.</remarks>
public sealed class RoomClock
{
    private static readonly TimeSpan Carried = TimeSpan.FromHours(24);
    private static readonly TimeSpan Recent = TimeSpan.FromDays(7);

    // All four run together, ordered by moment; the last two count from the first reading.
    private readonly long[] _moments;
    private readonly double[] _deficits;
    private readonly double[] _equivalentTicks;
    private readonly long[] _unreadTicks;
    private readonly double _meanRate;

    /// <summary>A clock on these readings, in any order; of two at one moment the later in the list counts.</summary>
    public RoomClock(IEnumerable<RoomReading> readings)
    {
        var ordered = new SortedDictionary<long, double>();
        foreach (var reading in readings)
        {
            ordered[reading.At.UtcTicks] = reading.Air.Deficit.Kilopascals;
        }

        _moments = [.. ordered.Keys];
        _deficits = [.. ordered.Values];
        _meanRate = _deficits.Length > 0 ? Rate(_deficits.Average()) : RoomPace.Assumed.Rate;
        _equivalentTicks = new double[_moments.Length];
        _unreadTicks = new long[_moments.Length];
        for (var i = 1; i < _moments.Length; i++)
        {
            var span = _moments[i] - _moments[i - 1];
            _equivalentTicks[i] = _equivalentTicks[i - 1] + After(i - 1, span);
            _unreadTicks[i] = _unreadTicks[i - 1] + Math.Max(0, span - Carried.Ticks);
        }
    }

    /// <summary>The drying time from one moment to a later one.</summary>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="to"/> is before <paramref
    /// name="from"/>.</exception>
    public RoomTime Elapsed(DateTimeOffset from, DateTimeOffset to)
    {
        if (to < from)
        {
            throw new ArgumentOutOfRangeException(nameof(to), to, "The end is not before the start.");
        }

        var (equivalentFrom, unreadFrom) = Since(from.UtcTicks);
        var (equivalentTo, unreadTo) = Since(to.UtcTicks);
        return new RoomTime(
            TimeSpan.FromTicks((long)Math.Round(equivalentTo - equivalentFrom)),
            TimeSpan.FromTicks(unreadTo - unreadFrom));
    }

    /// <summary>
    /// The pace to expect from now on: the mean over the last 7 days' readings; none: over all; none at all: assumed.
    /// </summary>
    public RoomPace PaceAt(DateTimeOffset now)
    {
        double recent = 0, all = 0;
        int recentCount = 0, allCount = 0;
        for (var i = 0; i < _moments.Length && _moments[i] <= now.UtcTicks; i++)
        {
            all += _deficits[i];
            allCount++;
            if (_moments[i] >= now.UtcTicks - Recent.Ticks)
            {
                recent += _deficits[i];
                recentCount++;
            }
        }

        return (recentCount, allCount) switch
        {
            ( > 0, _) => new RoomPace(Rate(recent / recentCount), PaceGrounds.LastWeek),
            (_, > 0) => new RoomPace(Rate(all / allCount), PaceGrounds.OlderReadings),
            _ => RoomPace.Assumed,
        };
    }

    private static double Rate(double kilopascals) => DryingSpeed.Rate(VapourPressure.FromKilopascals(kilopascals));

    private double After(int reading, long ticks) =>
        Math.Min(ticks, Carried.Ticks) * Rate(_deficits[reading]) + Math.Max(0, ticks - Carried.Ticks) * _meanRate;

    private (double Equivalent, long Unread) Since(long moment)
    {
        var at = Array.BinarySearch(_moments, moment);
        var last = at >= 0 ? at : ~at - 1;
        if (last < 0)
        {
            var before = moment - (_moments.Length > 0 ? _moments[0] : 0);
            return (before * _meanRate, before);
        }

        var span = moment - _moments[last];
        return (_equivalentTicks[last] + After(last, span), _unreadTicks[last] + Math.Max(0, span - Carried.Ticks));
    }
}
