using StudioBot.Craft.Costs;
using StudioBot.Records.Materials;

namespace StudioBot.Records.Stock;

/// <summary>One line in the stock's book.</summary>
/// <param name="ActId">The act it hangs from.</param>
/// <param name="MaterialId">Of which material.</param>
/// <param name="LotId">Of which lot.</param>
/// <param name="Amount">How much; above zero.</param>
/// <param name="Fills">It came in; else it went out.</param>
/// <param name="Reason">Why; the opposite of an undone line has the reason of that line.</param>
/// <param name="MemberId">On whom it is booked; none: on nobody.</param>
/// <param name="HappenedAt">The moment it is about, UTC.</param>
public sealed record StockLine(
    long ActId,
    long MaterialId,
    long LotId,
    Amount Amount,
    bool Fills,
    StockReason Reason,
    long? MemberId,
    DateTimeOffset HappenedAt)
{
    /// <summary>What the amount was worth, by what its lot had cost; zero where nobody knows a price.</summary>
    public Money Worth { get; init; }
}
