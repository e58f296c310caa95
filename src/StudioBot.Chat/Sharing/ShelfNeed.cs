using StudioBot.Chat.Asking;
using StudioBot.Chat.Replies;
using StudioBot.Craft;
using StudioBot.Craft.Costs;
using StudioBot.Craft.Stock;
using StudioBot.Records.Materials;

namespace StudioBot.Chat.Sharing;

/// <summary>Whether a material is to be bought, and how much.</summary>
/// <param name="Level">What is left.</param>
/// <param name="Use">What it is used by.</param>
internal sealed record ShelfNeed(ShelfLevel Level, StockUse Use)
{
    // What is bought is to last so long past the mark (common practice).
    private const int CoverDays = 4 * 7;

    // So far above the mark a level is well above it (common practice).
    private const double Well = 1.25;

    private static readonly StockUse NoUse = new(new DailyUse(0, 0, IsLittleData: true), StockUse.MostDays, 0);

    /// <summary>Of what.</summary>
    public Material Material => Level.Material;

    /// <summary>How much is left, in its own unit.</summary>
    public double Units => Need.UnitsOf(Level.Left);

    /// <summary>How long an order takes.</summary>
    public LeadTime Lead => Material.LeadTime is { } known ? new LeadTime(known.TotalDays) : LeadTime.Usual;

    /// <summary>The level under which an order comes too late once in twenty times.</summary>
    public double Reorder => ReorderPoint.Of(Use.Rate, Lead, ServiceLevel.Usual);

    /// <summary>The higher one of the reorder point and the studio's own low level.</summary>
    public double Mark => Math.Max(Reorder, Material.Low is { } low ? Need.UnitsOf(low) : 0);

    /// <summary>From here on it is well above its mark.</summary>
    public double WellAbove => Well * Mark;

    /// <summary>Under its reorder point.</summary>
    public bool IsUnder => Units < Reorder;

    /// <summary>Under its reorder point, or at the studio's own low level.</summary>
    public bool IsWanted => IsUnder || Level.IsLow;

    /// <summary>What is missing to last four weeks from the mark, and to be well above it.</summary>
    public Need Missing => new(
        Material, Math.Max(Math.Max(Mark + CoverDays * Use.Rate.PerDay, WellAbove) - Math.Max(Units, 0), 1));

    /// <summary>It is made here, and not bought.</summary>
    public bool IsMixed => Material.Form == MaterialForm.Mixture;

    /// <summary>What is missing, in packs.</summary>
    public PackChoice Packs => PackChoice.Of(Missing);

    /// <summary>12 days; none where it was not used lately, or the book shows less than nothing.</summary>
    public string? Lasts => Forecast.DaysOfCover(Units, Use.Rate) switch
    {
        Finding<TimeSpan>.Found found => Days(found.Value.TotalDays),
        Finding<TimeSpan>.Cautioned found => Days(found.Value.TotalDays),
        _ => null,
    };

    /// <summary>All materials, in the order they were named.</summary>
    public static IReadOnlyList<ShelfNeed> All(Studio studio, DateTimeOffset now)
    {
        var uses = StockUse.All(studio, now);
        return [.. ShelfLevel.All(studio).Select(level =>
            new ShelfNeed(level, uses.GetValueOrDefault(level.Material.Id, NoUse)))];
    }

    /// <summary>2 x 250 ml, 16.40; 410 ml to mix.</summary>
    public string Words()
    {
        if (IsMixed)
        {
            return PackChoice.Measured(Missing);
        }

        var packs = Packs;
        return packs.Cost is { } cost ? $"{packs.Words}, {cost}" : packs.Words;
    }

    /// <summary>What all packs of these cost; zero where no price is known.</summary>
    public static Money CostOf(IEnumerable<ShelfNeed> needs) =>
        needs.Where(need => !need.IsMixed).Aggregate(default(Money), (sum, need) => sum + (need.Packs.Cost ?? default));

    /// <summary>1 day, 12 days, less than a day.</summary>
    public static string Days(double days) => Math.Floor(days) switch
    {
        < 1 => "less than a day",
        1 => "1 day",
        var whole => $"{Show.Number(whole, 0)} days",
    };
}
