using StudioBot.Chat.Asking;
using StudioBot.Chat.Learning;
using StudioBot.Craft.Stock;

namespace StudioBot.Chat.Sharing;

/// <summary>How long what was on the shelf was told to last, against how long use took for it.</summary>
internal static class StockCovers
{
    // Older ones were another habit (common practice).
    private const int MostPurchases = 12;

    // Where nobody can say how long it lasts at most, so many times as long as is likely is waited for.
    private const double LongAfter = 2;

    /// <summary>What would have been told of each purchase once it was booked, in days of everyday use. Only those of
    /// which all the time that was told is over: else those that were gone soon would count alone.</summary>
    /// <param name="studio">The records.</param>
    /// <param name="now">The moment up to which they are looked at.</param>
    public static IReadOnlyList<PastGuess> Past(Studio studio, DateTimeOffset now) =>
        [.. ShelfLevel.All(studio).SelectMany(level => Past(level, studio, now)).OrderBy(one => one.At)];

    private static IEnumerable<PastGuess> Past(ShelfLevel level, Studio studio, DateTimeOffset now)
    {
        // What stands in stopped lots was in use once, and nobody knows until when.
        if (Need.UnitsOf(level.Stopped) > 0)
        {
            yield break;
        }

        var (material, uses) = (level.Material, new StockUses(studio, now));
        var ahead = (int)Math.Ceiling(Deliveries.Of(material, studio).Lead.Days) + ShelfNeed.CoverDays;
        foreach (var at in studio.View.Stock.CameAt(material.Id).Where(at => at < now).TakeLast(MostPurchases))
        {
            var left = Need.UnitsOf(level.Left) - studio.View.Stock.WrittenAfter(at, material.Id)
                .Sum(line => line.Fills ? Need.UnitsOf(line.Amount) : -Need.UnitsOf(line.Amount));
            var use = new StockUses(studio, at, studio.View.Acts.FirstWrittenSince(at.AddTicks(1)))
                .Of(material.Id, ahead);
            if (left <= 0 || use.Rate is { PerDay: <= 0 } or { IsLittleData: true } || use.Lately <= 0)
            {
                continue;
            }

            var (likely, span) = (left / use.Rate.PerDay, CoverSpan.Of(left, use.Rate, use.Days));
            var gone = (now - at).TotalDays;
            if (gone >= (span.Latest?.TotalDays ?? LongAfter * likely))
            {
                yield return new PastGuess(
                    material.Name,
                    at,
                    Lasted(left, uses.DaysSince(at, material.Id)) ?? gone,
                    likely,
                    left / use.Lately,
                    span.Earliest.TotalDays,
                    span.Latest?.TotalDays ?? double.PositiveInfinity);
            }
        }
    }

    // Within a day it is used evenly; none where it is not used up yet.
    private static double? Lasted(double left, IReadOnlyList<double> days)
    {
        for (var day = 0; day < days.Count; day++)
        {
            if (days[day] >= left)
            {
                return day + left / days[day];
            }

            left -= days[day];
        }

        return null;
    }
}
