using CsCheck;
using MathNet.Numerics.Distributions;
using StudioBot.Craft.Stock;

namespace StudioBot.Craft.Tests.Stock;

public sealed class ReorderPointTests
{
    [Theory]
    [InlineData(12, 22)]
    [InlineData(35, 22)]
    [InlineData(5, 15)]
    public void The_skewed_form_is_near_the_gamma_quantile_of_a_numerics_library(double perDay, double deviation)
    {
        // Eight days: a lead time of seven and the day of the order.
        double mean = perDay * 8, sd = deviation * Math.Sqrt(8);
        var gamma = Gamma.InvCDF(mean * mean / (sd * sd), mean / (sd * sd), 0.95);

        var point = ReorderPoint.Of(new DailyUse(perDay, deviation), LeadTime.Usual, ServiceLevel.Usual);

        Assert.Equal(1, point / Math.Max(gamma, mean + ServiceLevel.Usual.Deviations * sd), 0.02);
    }

    [Fact]
    public void It_is_never_below_the_plain_form() =>
        Gen.Select(Gen.Double[0, 100], Gen.Double[0, 100], Gen.Double[0, 30], Gen.Double[0, 5], Gen.Double[0.5, 0.999])
            .Sample((perDay, deviation, days, leadDeviation, share) =>
            {
                var (use, lead) = (new DailyUse(perDay, perDay * deviation / 30), new LeadTime(days, leadDeviation));
                var level = ServiceLevel.FromShare(share);
                return ReorderPoint.Of(use, lead, level) >= ReorderPoint.Plain(use, lead, level) - 1e-9;
            });

    [Fact]
    public void What_nobody_uses_is_not_bought() =>
        Assert.Equal(0, ReorderPoint.Of(new DailyUse(0, 0), LeadTime.Usual, ServiceLevel.Usual));
}
