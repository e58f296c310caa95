using StudioBot.Craft.Stock;

namespace StudioBot.Craft.Tests.Stock;

/// <summary>A week is common practice, worth two deliveries.</summary>
public sealed class LeadTimeTests
{
    [Fact]
    public void One_delivery_says_nothing_yet() => Assert.Equal(LeadTime.Usual, LeadTime.Usual.After([14]));

    [Fact]
    public void Own_deliveries_pull_it_from_a_week_to_what_they_took()
    {
        // (2·7 + 10 + 12 + 14)/5 = 10; σ² = (4·1.75² + 8 + 2·3/5·5²)/7 = 7.179, the next one's sd √(7.179·1.2) = 2.935
        var own = LeadTime.Usual.After([10, 12, 14]);

        Assert.Equal(10, own.Days, 9);
        Assert.Equal(2.935, own.Deviation, 3);
    }

    [Fact]
    public void An_order_that_went_astray_is_none()
    {
        Assert.False(LeadTime.Usual.Fits(0.4));     // fetched, or written late
        Assert.False(LeadTime.Usual.Fits(36));
        Assert.Equal(LeadTime.Usual.After([6, 8]), LeadTime.Usual.After([6, 8, 90]));
    }

    [Fact]
    public void Uneven_deliveries_raise_the_reorder_point()
    {
        // inventory textbooks, from memory: z·√(Lσ_d² + d²σ_L²)
        var use = DailyUse.From([.. Enumerable.Repeat(10.0, 56)]);

        Assert.True(ReorderPoint.Of(use, LeadTime.Usual.After([2, 12, 7]), ServiceLevel.Usual)
            > ReorderPoint.Of(use, LeadTime.Usual.After([7, 7, 7]), ServiceLevel.Usual));
    }
}
