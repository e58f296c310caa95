using StudioBot.Craft.Units;

namespace StudioBot.Craft.Coats;

/// <summary>
/// A film's temperature since the pour, piecewise constant: each reading holds until the next, the last for ever, the
/// first
/// also before itself.
/// </summary>
internal sealed class FilmWarmth
{
    private readonly DateTimeOffset _poured;

    // Ordered; the first begins at the pour.
    private readonly FilmReading[] _readings;

    public FilmWarmth(DateTimeOffset poured, IReadOnlyList<FilmReading> readings)
    {
        if (readings.Count == 0)
        {
            throw new ArgumentException("A film has at least one temperature.", nameof(readings));
        }

        _poured = poured;
        FilmReading[] ordered = [.. readings.OrderBy(reading => reading.At)];
        var first = Math.Max(0, Array.FindLastIndex(ordered, reading => reading.At <= poured));
        _readings = ordered[first..];
    }

    /// <summary>The coldest met from the pour until a moment.</summary>
    public Temperature ColdestUntil(DateTimeOffset end) => Met(end).Min();

    /// <summary>The warmest met from the pour until a moment.</summary>
    public Temperature WarmestUntil(DateTimeOffset end) => Met(end).Max();

    /// <summary>When the speeds since the pour add up to a time of the sheet; null when they never do.</summary>
    /// <param name="needed">The sheet's time.</param>
    /// <param name="speed">How many times as fast as on the sheet, at a temperature; 0 where it stands still.</param>
    public DateTimeOffset? Reaches(TimeSpan needed, Func<Temperature, double> speed)
    {
        var (at, left) = (_poured, needed);
        for (var i = 0; i < _readings.Length - 1; i++)
        {
            var rate = speed(_readings[i].Film);
            var span = _readings[i + 1].At - at;
            if (span * rate >= left)
            {
                return at + left / rate;
            }

            left -= span * rate;
            at = _readings[i + 1].At;
        }

        var last = speed(_readings[^1].Film);
        return last > 0 ? at + left / last : null;
    }

    /// <summary>The sheet's time that the speeds since the pour add up to until a moment; none before the
    /// pour.</summary>
    /// <param name="end">Until then.</param>
    /// <param name="speed">How many times as fast as on the sheet, at a temperature; 0 where it stands still.</param>
    public TimeSpan Gone(DateTimeOffset end, Func<Temperature, double> speed)
    {
        var (at, gone) = (_poured, TimeSpan.Zero);
        for (var i = 0; i < _readings.Length && at < end; i++)
        {
            var until = i + 1 < _readings.Length && _readings[i + 1].At < end ? _readings[i + 1].At : end;
            gone += (until - at) * speed(_readings[i].Film);
            at = until;
        }

        return gone;
    }

    private IEnumerable<Temperature> Met(DateTimeOffset end) =>
        _readings.Where((reading, i) => i == 0 || reading.At < end).Select(reading => reading.Film);
}
