using StudioBot.Craft.Stock;

namespace StudioBot.Craft.Tests.Stock;

public sealed class ValuingTests
{
    private static readonly PricedLot[] Lots = [new(1000, 0.0200m), new(500, 0.0260m)];

    [Fact]
    public void Taking_all_costs_the_same_either_way() =>
        // 1000 at 0.0200 and 500 at 0.0260 are 33.00 in any order.
        Assert.Equal(
            (33.00m, 33.00m), (Valuing.OldestFirst(Lots, 1500).Cost, Valuing.ByAverage(Lots, 1500).Cost));

    [Fact]
    public void More_than_there_is_goes_at_the_last_price_and_says_so()
    {
        Assert.Equal(new IssueValue(33.00m + 100 * 0.0260m, true), Valuing.OldestFirst(Lots, 1600));
        Assert.True(Valuing.ByAverage(Lots, 1600).IsBeyondLots);
        Assert.False(Valuing.OldestFirst(Lots, 1500).IsBeyondLots);
    }

    [Fact]
    public void Without_a_lot_there_is_no_price()
    {
        Assert.Throws<ArgumentException>(() => Valuing.OldestFirst([], 10));
        Assert.Throws<ArgumentException>(() => Valuing.AveragePrice([]));
        Assert.Throws<ArgumentOutOfRangeException>(() => Valuing.OldestFirst(Lots, -1));
    }
}
