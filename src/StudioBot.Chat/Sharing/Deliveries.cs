using StudioBot.Chat.Learning;
using StudioBot.Craft.Stock;
using StudioBot.Records.Materials;

namespace StudioBot.Chat.Sharing;

/// <summary>How long orders of a material take: as it is set, or a week, and then by what the studio's own took from
/// <c>ordered</c> to <c>bought</c>.</summary>
/// <param name="Lead">How long, and how far one delivery scatters.</param>
/// <param name="Own">On how many own deliveries it rests; 0 while they are too few.</param>
internal sealed record Deliveries(LeadTime Lead, int Own)
{
    // Older ones were other suppliers (common practice).
    private const int MostDeliveries = 12;

    // A normal 80 % interval.
    private const double EightOfTen = 1.2816;

    /// <summary>Of this material, as the records stand now.</summary>
    public static Deliveries Of(Material material, Studio studio)
    {
        var believed = Believed(material);
        var ordered = studio.View.Studio.SetAt(Ordered.NameOf(material.Id));
        if (ordered.Count < LeadTime.EnoughDeliveries)
        {
            return new Deliveries(believed, 0);
        }

        List<double> took = [.. Took(ordered, studio.View.Stock.CameAt(material.Id)).Select(one => one.Days)
            .Where(believed.Fits)
            .TakeLast(MostDeliveries)];
        return took.Count < LeadTime.EnoughDeliveries
            ? new Deliveries(believed, 0)
            : new Deliveries(believed.After(took), took.Count);
    }

    /// <summary>What would have been told of each order once two had come, against how long it took, in days.</summary>
    public static IReadOnlyList<PastGuess> Past(Studio studio) =>
        [.. studio.View.Materials.All().SelectMany(material => Past(material, studio)).OrderBy(one => one.At)];

    private static IEnumerable<PastGuess> Past(Material material, Studio studio)
    {
        var believed = Believed(material);
        List<(DateTimeOffset At, double Days)> took =
        [
            .. Took(studio.View.Studio.SetAt(Ordered.NameOf(material.Id)), studio.View.Stock.CameAt(material.Id))
                .Where(one => believed.Fits(one.Days)),
        ];
        for (var at = LeadTime.EnoughDeliveries; at < took.Count; at++)
        {
            var told = believed.After([.. took[..at].Select(one => one.Days).TakeLast(MostDeliveries)]);
            var half = EightOfTen * told.Deviation;
            yield return new PastGuess(
                material.Name,
                took[at].At,
                took[at].Days,
                told.Days,
                believed.Days,
                told.Days - half,
                told.Days + half);
        }
    }

    private static LeadTime Believed(Material material) =>
        material.LeadTime is { } known ? new LeadTime(known.TotalDays) : LeadTime.Usual;

    /// <summary>7 days unless set; 9 days, by 3 own deliveries.</summary>
    public string Words(Material material) => ShelfNeed.Days(Lead.Days) + (Own, material.LeadTime) switch
    {
        ( > 0, _) => $", by {Own} own deliveries",
        (_, null) => " unless set",
        _ => "",
    };

    // From the day of an order to the next that came after it was told; said again meanwhile, it is the same order.
    private static IEnumerable<(DateTimeOffset At, double Days)> Took(
        IReadOnlyList<(DateTimeOffset Written, DateTimeOffset About)> ordered, IReadOnlyList<DateTimeOffset> came)
    {
        DateTimeOffset? open = null;
        foreach (var (at, since) in came.Select(at => (At: at, Since: (DateTimeOffset?)null))
            .Concat(ordered.Select(one => (At: one.Written, Since: (DateTimeOffset?)one.About)))
            .OrderBy(one => one.At))
        {
            if (since is null && open is { } told)
            {
                yield return (at, (at - told).TotalDays);
            }

            open = since is null ? null : open ?? since;
        }
    }
}
