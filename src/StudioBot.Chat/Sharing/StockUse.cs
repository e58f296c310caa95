using StudioBot.Chat.Asking;
using StudioBot.Chat.Replies;
using StudioBot.Craft.Stock;
using StudioBot.Records.Stock;

namespace StudioBot.Chat.Sharing;

/// <summary>What a material is used by, over the last eight weeks.</summary>
/// <param name="Rate">What a day takes, days without use counted.</param>
/// <param name="Days">How many days it was looked at.</param>
/// <param name="Uses">On how many of them it was used.</param>
internal sealed record StockUse(DailyUse Rate, int Days, int Uses)
{
    /// <summary>How far back is looked.</summary>
    public const int MostDays = 8 * 7;

    // A book a few days old would make every first use a habit (common practice).
    private const int FewestDays = 2 * 7;

    /// <summary>Whether a line of the book is use; what comes back is taken off again.</summary>
    public static bool IsUse(StockReason reason) => reason is StockReason.Used or StockReason.Mixed
        or StockReason.Poured or StockReason.Coated or StockReason.Returned;

    /// <summary>The use of every material that is in the book, by its number, as it was at this moment.</summary>
    public static IReadOnlyDictionary<long, StockUse> All(Studio studio, DateTimeOffset now)
    {
        var today = DayOf(now, studio);
        var begun = studio.View.Stock.Begun();
        var lines = studio.View.Stock.HoldingBetween(now.AddDays(-MostDays - 1), DateTimeOffset.MaxValue)
            .Where(line => IsUse(line.Reason) && line.HappenedAt <= now)
            .ToLookup(line => line.MaterialId, line => (
                Day: DayOf(line.HappenedAt, studio),
                Units: line.Fills ? -Need.UnitsOf(line.Amount) : Need.UnitsOf(line.Amount)));
        return begun.ToDictionary(
            first => first.Key,
            first => Of(
                lines[first.Key],
                Math.Clamp(today - DayOf(first.Value, studio) + 1, FewestDays, MostDays),
                today));
    }

    private static StockUse Of(IEnumerable<(int Day, double Units)> lines, int count, int today)
    {
        var days = new double[count];
        foreach (var (day, units) in lines)
        {
            var at = count - 1 - (today - day);
            if (at >= 0 && at < count)
            {
                days[at] += units;
            }
        }

        double[] used = [.. days.Select(units => Math.Max(units, 0))];
        return new StockUse(DailyUse.From(used), count, used.Count(units => units > 0));
    }

    private static int DayOf(DateTimeOffset moment, Studio studio) =>
        DateOnly.FromDateTime(WallTime.Of(moment, studio)).DayNumber;
}
