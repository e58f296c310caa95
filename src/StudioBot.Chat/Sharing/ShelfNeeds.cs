using StudioBot.Records.Materials;

namespace StudioBot.Chat.Sharing;

/// <summary>What is to be bought, at one moment of a studio; each material is worked out when it is asked for, once.
/// </summary>
internal sealed class ShelfNeeds
{
    private readonly Studio _studio;
    private readonly DateTimeOffset _now;
    private readonly Lazy<IReadOnlyList<ShelfLevel>> _levels;
    private readonly Lazy<ILookup<long, Reservation>> _reserved;
    private readonly Lazy<StockUses> _uses;
    private readonly Dictionary<long, ShelfNeed> _needs = [];

    /// <summary>The shelf at this moment.</summary>
    public ShelfNeeds(Studio studio, DateTimeOffset now)
    {
        (_studio, _now) = (studio, now);
        _levels = new(() => ShelfLevel.All(studio));
        _reserved = new(() => Reservation.All(studio, now));
        _uses = new(() => new StockUses(studio, now));
    }

    /// <summary>All materials, in the order they were named.</summary>
    public IReadOnlyList<ShelfNeed> All() => [.. _levels.Value.Select(Of)];

    /// <summary>The materials of these names, in the order they were named.</summary>
    public IReadOnlyList<ShelfNeed> Named(IReadOnlyCollection<string> names) =>
        [.. _levels.Value.Where(level => names.Contains(level.Material.Name)).Select(Of)];

    /// <summary>The numbers of all materials.</summary>
    public IReadOnlyCollection<long> Materials => [.. _levels.Value.Select(level => level.Material.Id)];

    /// <summary>Whether this material is to be bought; none where there is none of this number.</summary>
    public ShelfNeed? Of(long material) =>
        _levels.Value.FirstOrDefault(level => level.Material.Id == material) is { } level ? Of(level) : null;

    /// <summary>Whether this material is to be bought.</summary>
    public ShelfNeed Of(Material material) => Of(_levels.Value.First(level => level.Material.Id == material.Id));

    private ShelfNeed Of(ShelfLevel level)
    {
        if (!_needs.TryGetValue(level.Material.Id, out var need))
        {
            _needs[level.Material.Id] = need = Reckoned(level);
        }

        return need;
    }

    private ShelfNeed Reckoned(ShelfLevel level)
    {
        var order = Ordered.Of(level.Material.Id, _studio);
        var deliveries = Deliveries.Of(level.Material, _studio);
        var ahead = (int)Math.Ceiling(deliveries.Lead.Days) + ShelfNeed.CoverDays;
        return new ShelfNeed(level, _uses.Value.Of(level.Material.Id, ahead))
        {
            Deliveries = deliveries,
            Reserved = [.. _reserved.Value[level.Material.Id]],
            Order = order,
            IsOrdered = order?.Stands(_now) == true,
            Now = _now,
        };
    }
}
