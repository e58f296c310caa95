using StudioBot.Chat.Asking;
using StudioBot.Chat.Replies;
using StudioBot.Craft.Stock;
using StudioBot.Records.Stock;

namespace StudioBot.Chat.Sharing;

/// <summary>What materials are used by, as it was at one moment: their lines of eight weeks, and of a season a year
/// ago, are read. What a workshop was to take is no everyday use: it is taken off what was used on its day, and as far
/// as that was less, off what was used on the next, when it is booked by who went home first.</summary>
internal sealed class StockUses
{
    // Whole weeks, so that weekends fall on weekends.
    private const int Year = 52 * 7;

    // What was told later than that of a year ago is left out: reading all since would be reading a year.
    private const int ToldLater = 14;

    private readonly Studio _studio;
    private readonly DateTimeOffset _now;
    private readonly int _today;
    private readonly Window _lately;

    /// <summary>Up to this moment.</summary>
    /// <param name="studio">The records.</param>
    /// <param name="now">The moment.</param>
    /// <param name="behind">What was written from this act on is left out: for a moment that is gone, what was told
    /// later. None: nothing is.</param>
    public StockUses(Studio studio, DateTimeOffset now, long? behind = null)
    {
        (_studio, _now) = (studio, now);
        _today = DayOf(now);
        _lately = new Window(studio, now, StockUse.MostDays, behind);
    }

    private const long QuarterHour = 15 * TimeSpan.TicksPerMinute;

    private readonly Dictionary<long, int> _dayOfQuarter = [];
    private readonly Dictionary<int, Window> _aYearAgo = [];

    /// <summary>The use of the material of this number; none at all where nothing of it ever came.</summary>
    /// <param name="material">Which.</param>
    /// <param name="ahead">How many days are to be foretold, one or more.</param>
    public StockUse Of(long material, int ahead)
    {
        if (_studio.View.Stock.Begun(material) is not { } begun)
        {
            return StockUse.Nothing;
        }

        var age = _today - DayOf(begun) + 1;
        var (used, apart) = Days(material, _lately, _now, Math.Clamp(age, StockUse.FewestDays, StockUse.MostDays));
        var rate = DailyUse.From(used);
        var season = !rate.IsLittleData && age >= Year + StockUse.MostDays ? SeasonOf(material, ahead) : null;
        return new StockUse(season?.Over(rate) ?? rate, used.Length, used.Count(units => units > 0))
        {
            Season = season,
            Apart = apart,
            Lately = used.TakeLast(StockUse.LatelyDays).Average(),
        };
    }

    /// <summary>What each day took since a moment, that of the moment first and today last.</summary>
    public IReadOnlyList<double> DaysSince(DateTimeOffset since, long material)
    {
        var count = _today - DayOf(since) + 1;
        return Days(material, new Window(_studio, _now, count, null), _now, count, since).Days;
    }

    private Season? SeasonOf(long material, int ahead)
    {
        var end = _now.AddDays(ahead - Year);
        if (!_aYearAgo.TryGetValue(ahead, out var window))
        {
            var behind = _studio.View.Acts.FirstWrittenSince(end.AddDays(ToldLater));
            _aYearAgo[ahead] = window = new Window(_studio, end, StockUse.MostDays + ahead, behind);
        }

        var (days, _) = Days(material, window, end, StockUse.MostDays + ahead);
        return Season.Of(days[..StockUse.MostDays], days[StockUse.MostDays..]);
    }

    // Of so many days, the last of them that of the end, and what of it was for workshops. The day before them is
    // looked at too: what a workshop took on it is not looked for on the first.
    private (double[] Days, double Apart) Days(
        long material, Window window, DateTimeOffset end, int count, DateTimeOffset since = default)
    {
        var days = new double[count + 1];
        var last = DayOf(end);
        foreach (var use in _studio.View.Stock.UsesSince(window.Since, material, window.First, window.Behind))
        {
            if (use.At > since && At(use.At) is { } at)
            {
                days[at] += use.Units;
            }
        }

        days = [.. days.Select(units => Math.Max(units, 0))];
        var apart = 0d;
        foreach (var take in window.Workshops.Value[material])
        {
            var (left, day) = (take.Units, At(take.At) ?? count + 1);
            for (var at = day; at <= Math.Min(day + 1, count); at++)
            {
                var off = Math.Min(days[at], left);
                days[at] -= off;
                left -= off;
                apart += at > 0 ? off : 0;
            }
        }

        return (days[1..], apart);

        int? At(DateTimeOffset moment)
        {
            var at = count - (last - DayOf(moment));
            return moment <= end && at >= 0 && at <= count ? at : null;
        }
    }

    // In every zone a day ends with a quarter of an hour: what one of them fell on is worked out once.
    private int DayOf(DateTimeOffset moment)
    {
        var quarter = moment.UtcTicks / QuarterHour;
        if (!_dayOfQuarter.TryGetValue(quarter, out var day))
        {
            day = _dayOfQuarter[quarter] = DateOnly.FromDateTime(WallTime.Of(moment, _studio)).DayNumber;
        }

        return day;
    }

    // So many days up to a moment, read once for all materials.
    private sealed class Window(Studio studio, DateTimeOffset end, int days, long? behind)
    {
        public DateTimeOffset Since { get; } = end.AddDays(-days - 1);

        public long? Behind => behind;

        public Lazy<long> First { get; } = new(() => studio.View.Acts.FirstWrittenSince(end.AddDays(-days - 1)));

        public Lazy<ILookup<long, UseAt>> Workshops { get; } = new(() => studio.View.Workshops
            .Between(end.AddDays(-days - 1), end)
            .ToLookup(take => take.MaterialId, take => new UseAt(take.StartsAt, Need.UnitsOf(take.Amount))));
    }
}
