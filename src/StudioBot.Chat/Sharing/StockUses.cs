using StudioBot.Chat.Replies;
using StudioBot.Craft.Stock;

namespace StudioBot.Chat.Sharing;

/// <summary>What materials are used by, as it was at one moment; only their lines of eight weeks are read.</summary>
internal sealed class StockUses
{
    private readonly Studio _studio;
    private readonly DateTimeOffset _now;
    private readonly int _today;
    private readonly Lazy<long> _firstAct;

    /// <summary>Up to this moment.</summary>
    public StockUses(Studio studio, DateTimeOffset now)
    {
        (_studio, _now) = (studio, now);
        _today = DayOf(now);
        _firstAct = new(() => studio.View.Acts.FirstWrittenSince(Since));
    }

    private DateTimeOffset Since => _now.AddDays(-StockUse.MostDays - 1);

    /// <summary>The use of the material of this number; none at all where nothing of it ever came.</summary>
    public StockUse Of(long material)
    {
        if (_studio.View.Stock.Begun(material) is not { } begun)
        {
            return StockUse.Nothing;
        }

        var days = new double[Math.Clamp(_today - DayOf(begun) + 1, StockUse.FewestDays, StockUse.MostDays)];
        foreach (var use in _studio.View.Stock.UsesSince(Since, material, _firstAct.Value))
        {
            var at = days.Length - 1 - (_today - DayOf(use.At));
            if (use.At <= _now && at >= 0 && at < days.Length)
            {
                days[at] += use.Units;
            }
        }

        double[] used = [.. days.Select(units => Math.Max(units, 0))];
        return new StockUse(DailyUse.From(used), used.Length, used.Count(units => units > 0));
    }

    private int DayOf(DateTimeOffset moment) => DateOnly.FromDateTime(WallTime.Of(moment, _studio)).DayNumber;
}
