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

    /// <summary>Of this material, as the records stand now.</summary>
    public static Deliveries Of(Material material, Studio studio)
    {
        var believed = material.LeadTime is { } known ? new LeadTime(known.TotalDays) : LeadTime.Usual;
        var ordered = studio.View.Studio.SetAt(Ordered.NameOf(material.Id));
        if (ordered.Count < LeadTime.EnoughDeliveries)
        {
            return new Deliveries(believed, 0);
        }

        List<double> took = [.. Took(ordered, studio.View.Stock.CameAt(material.Id)).Where(believed.Fits)
            .TakeLast(MostDeliveries)];
        return took.Count < LeadTime.EnoughDeliveries
            ? new Deliveries(believed, 0)
            : new Deliveries(believed.After(took), took.Count);
    }

    /// <summary>7 days unless set; 9 days, by 3 own deliveries.</summary>
    public string Words(Material material) => ShelfNeed.Days(Lead.Days) + (Own, material.LeadTime) switch
    {
        ( > 0, _) => $", by {Own} own deliveries",
        (_, null) => " unless set",
        _ => "",
    };

    // From the day of an order to the next that came after it was told; said again meanwhile, it is the same order.
    private static IEnumerable<double> Took(
        IReadOnlyList<(DateTimeOffset Written, DateTimeOffset About)> ordered, IReadOnlyList<DateTimeOffset> came)
    {
        DateTimeOffset? open = null;
        foreach (var (at, since) in came.Select(at => (At: at, Since: (DateTimeOffset?)null))
            .Concat(ordered.Select(one => (At: one.Written, Since: (DateTimeOffset?)one.About)))
            .OrderBy(one => one.At))
        {
            if (since is null && open is { } told)
            {
                yield return (at - told).TotalDays;
            }

            open = since is null ? null : open ?? since;
        }
    }
}
