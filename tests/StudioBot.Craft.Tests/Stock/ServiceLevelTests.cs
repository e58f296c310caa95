using StudioBot.Craft.Stock;

namespace StudioBot.Craft.Tests.Stock;

public sealed class ServiceLevelTests
{
    [Theory]
    // Normal tables.
    [InlineData(0.90, 1.2816)]
    [InlineData(0.95, 1.6449)]
    [InlineData(0.98, 2.0537)]
    [InlineData(0.99, 2.3263)]
    public void Deviations_are_those_of_the_tables(double share, double deviations)
    {
        Assert.Equal(deviations, ServiceLevel.FromShare(share).Deviations, 0.00006);
        Assert.Equal(share, ServiceLevel.FromDeviations(deviations).Share, 0.00001);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    public void Never_and_always_are_no_levels(double share) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => ServiceLevel.FromShare(share));
}
