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
    /// <summary>So many days are bought for past the mark.</summary>
    public const int CoverDays = 4 * 7;

    // So far above the mark a level is well above it (common practice).
    private const double Well = 1.25;

    /// <summary>What workshops to come take of it, the next first.</summary>
    public IReadOnlyList<Reservation> Reserved { get; init; } = [];

    /// <summary>What is on its way, or overdue; none where nobody said so, or it came.</summary>
    public Ordered? Order { get; init; }

    /// <summary>Whether an order is believed to be on its way now.</summary>
    public bool IsOrdered { get; init; }

    /// <summary>The moment it is looked at.</summary>
    public DateTimeOffset Now { get; init; }

    /// <summary>Of what.</summary>
    public Material Material => Level.Material;

    /// <summary>How much is left, in its own unit.</summary>
    public double Units => Need.UnitsOf(Level.Left);

    /// <summary>How long its orders take.</summary>
    public required Deliveries Deliveries { get; init; }

    /// <summary>How long an order takes.</summary>
    public LeadTime Lead => Deliveries.Lead;

    /// <summary>What is known to be wanted before a next order could come and has lasted: workshops until then.
    /// </summary>
    public double Booked => Counted.Sum(one => one.Units);

    /// <summary>Those workshops, the next first.</summary>
    public IReadOnlyList<Reservation> Counted =>
        [.. Reserved.Where(one => one.Workshop.StartsAt < Now.AddDays(Lead.Days + CoverDays))];

    /// <summary>The first workshop for which too little will be there, if it is used as it is until then; none where
    /// all will have enough.</summary>
    public Reservation? Endangered
    {
        get
        {
            var taken = 0d;
            foreach (var one in Counted)
            {
                taken += one.Units;
                if (Units - Use.Rate.PerDay * (one.Workshop.StartsAt - Now).TotalDays < taken)
                {
                    return one;
                }
            }

            return null;
        }
    }

    /// <summary>When an order for a workshop is to be made, so that it comes too late once in twenty times.</summary>
    public DateTimeOffset OrderBy(Reservation one) => one.Workshop.StartsAt
        .AddDays(-(Lead.Days + ServiceLevel.Usual.Deviations * Lead.Deviation));

    /// <summary>What workshops leave of the level.</summary>
    public double Free => Units - Booked;

    /// <summary>The level under which an order comes too late once in twenty times.</summary>
    public double Reorder => ReorderPoint.Of(Use.Rate, Lead, ServiceLevel.Usual);

    /// <summary>The higher one of the reorder point and the studio's own low level.</summary>
    public double Mark => Math.Max(Reorder, Material.Low is { } low ? Need.UnitsOf(low) : 0);

    /// <summary>From here on it is well above its mark.</summary>
    public double WellAbove => Well * Mark;

    /// <summary>Under its reorder point.</summary>
    public bool IsUnder => Free < Reorder;

    /// <summary>Under its reorder point, or at the studio's own low level.</summary>
    public bool IsWanted => IsUnder || Level.IsLow || Material.Low is { } low && Free <= Need.UnitsOf(low);

    /// <summary>It is wanted for workshops alone.</summary>
    public bool IsForWorkshops => IsWanted && Booked > 0 && Units >= Reorder && !Level.IsLow;

    /// <summary>What is missing to last four weeks from the mark, and to be well above it.</summary>
    public Need Missing => new(
        Material,
        Math.Max(Math.Max(Mark + CoverDays * Use.Rate.PerDay, WellAbove) - Math.Max(Units, 0) + Booked, 1));

    /// <summary>It is made here, and not bought.</summary>
    public bool IsMixed => Material.Form == MaterialForm.Mixture;

    /// <summary>What is missing, in packs.</summary>
    public PackChoice Packs => PackChoice.Of(Missing);

    /// <summary>How long it lasts, what workshops take off first; none where it was not used lately, or the book shows
    /// less than nothing.</summary>
    public double? Cover => DaysOf(Forecast.DaysOfCover(Units, Use.Rate, Booked));

    /// <summary>12 days; none where nothing is free, it was not used lately, or the book shows less than nothing.
    /// </summary>
    public string? Lasts => Free > 0 && Cover is { } days ? Days(days) : null;

    /// <summary>9 to 17, eight times of ten, in days; 9 or more; none where there is no figure or use is even.
    /// </summary>
    public string? Between
    {
        get
        {
            if (Lasts is null)
            {
                return null;
            }

            var span = CoverSpan.Of(Free, Use.Rate, Use.Days);
            var earliest = Show.Number(Math.Floor(span.Earliest.TotalDays), 0);
            return span.Latest is not { } latest ? $"{earliest} or more"
                : Math.Floor(latest.TotalDays) is var last && last > Math.Floor(span.Earliest.TotalDays)
                    ? $"{earliest} to {Show.Number(last, 0)}"
                    : null;
        }
    }

    /// <summary>So long would that last in days; none where there is no figure.</summary>
    public static double? DaysOf(Finding<TimeSpan> cover) => cover switch
    {
        Finding<TimeSpan>.Found found => found.Value.TotalDays,
        Finding<TimeSpan>.Cautioned found => found.Value.TotalDays,
        _ => null,
    };

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
