namespace StudioBot.Craft.Stock;

/// <summary>
/// What stock is worth: by its lots, the oldest first, or at their average. A studio keeps to one of the two.
/// </summary>
public static class Valuing
{
    /// <summary>The average price of what is left, weighted by it.</summary>
    /// <exception cref="ArgumentException">Nothing is left.</exception>
    public static decimal AveragePrice(IReadOnlyList<PricedLot> lots)
    {
        var left = lots.Sum(lot => lot.Left);
        return left > 0
            ? lots.Sum(lot => lot.Left * lot.UnitPrice) / left
            : throw new ArgumentException("An average needs something left.", nameof(lots));
    }

    /// <summary>At the average price.</summary>
    /// <exception cref="ArgumentException">Nothing is left.</exception>
    /// <exception cref="ArgumentOutOfRangeException">Less than nothing is taken.</exception>
    public static IssueValue ByAverage(IReadOnlyList<PricedLot> lots, decimal taken) =>
        new(Checked(taken) * AveragePrice(lots), taken > lots.Sum(lot => lot.Left));

    /// <summary>The oldest lot first; beyond the lots, the last lot's price.</summary>
    /// <param name="lots">Oldest first, at least one.</param>
    /// <param name="taken">Zero or more.</param>
    /// <exception cref="ArgumentException">There is no lot to take a price from.</exception>
    /// <exception cref="ArgumentOutOfRangeException">Less than nothing is taken.</exception>
    public static IssueValue OldestFirst(IReadOnlyList<PricedLot> lots, decimal taken)
    {
        if (lots.Count == 0)
        {
            throw new ArgumentException("A price comes from at least one lot.", nameof(lots));
        }

        var (left, cost) = (Checked(taken), 0m);
        foreach (var lot in lots)
        {
            var portion = Math.Min(left, lot.Left);
            cost += portion * lot.UnitPrice;
            left -= portion;
        }

        return new IssueValue(cost + left * lots[^1].UnitPrice, left > 0);
    }

    private static decimal Checked(decimal taken) => taken >= 0
        ? taken
        : throw new ArgumentOutOfRangeException(nameof(taken), taken, "What is taken is zero or more.");
}
