using StudioBot.Craft.Costs;

namespace StudioBot.Records.Materials;

/// <summary>One delivery of a material, or one making of a mixture.</summary>
/// <param name="Id">The studio's own number for it.</param>
/// <param name="Label">As written on it: H-12; none where nobody wrote one. The two parts of a kit share one.</param>
/// <param name="MaterialId">Which material.</param>
/// <param name="BoughtAt">When it came, UTC.</param>
/// <param name="Price">What the whole lot cost; none where unknown or made here.</param>
/// <param name="Bought">What came.</param>
/// <param name="Left">What is left of it.</param>
public sealed record Lot(
    long Id,
    string? Label,
    long MaterialId,
    DateTimeOffset BoughtAt,
    Money? Price,
    Amount Bought,
    Amount Left)
{
    /// <summary>What is left of it is worth; zero where nobody knows a price.</summary>
    public Money Worth { get; init; }

    /// <summary>When it was opened, UTC; none while nobody said so.</summary>
    public DateTimeOffset? OpenedAt { get; init; }

    /// <summary>Since when it is not to be used, and why; none while it may be.</summary>
    public LotStop? Stopped { get; init; }
}
