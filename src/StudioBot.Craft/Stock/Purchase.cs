using StudioBot.Craft.Costs;

namespace StudioBot.Craft.Stock;

/// <summary>What to buy.</summary>
/// <param name="Counts">How many of each pack, in the order the packs were given.</param>
/// <param name="Cost">All together.</param>
/// <param name="Surplus">What is bought beyond the need, in the material's unit.</param>
public sealed record Purchase(IReadOnlyList<int> Counts, Money Cost, long Surplus)
{
    /// <summary>All packs together.</summary>
    public int Packs => Counts.Sum();

    /// <summary>How long the surplus lasts at the usual use; to be held against its shelf life.</summary>
    public Finding<TimeSpan> SurplusLasts(DailyUse use) => Forecast.DaysOfCover(Surplus, use);
}
