using MathNet.Numerics.Statistics;
using StudioBot.Craft.Stock;

namespace StudioBot.Craft.Tests.Stock;

public sealed class DailyUseTests
{
    private static readonly double[] Lumpy =
        [.. Enumerable.Range(0, 100).Select(day => day % 7 == 0 ? 120.0 : day % 11 == 0 ? 40.0 : 0.0)];

    [Fact]
    public void Days_without_use_count()
    {
        var use = DailyUse.From(Lumpy);

        Assert.Equal(Lumpy.Mean(), use.PerDay, 9);
        Assert.Equal(Lumpy.StandardDeviation(), use.Deviation, 9);
        Assert.False(use.IsLittleData);
    }

    [Fact]
    public void Only_the_last_half_year_counts() =>
        Assert.Equal(
            DailyUse.From([.. Enumerable.Repeat(0.0, 82), .. Lumpy]),
            DailyUse.From([.. Enumerable.Repeat(900.0, 50), .. Enumerable.Repeat(0.0, 82), .. Lumpy]));

    [Fact]
    public void Fewer_than_five_uses_is_little_data()
    {
        // Common practice: the mean of the last 60 days, and one and a half times it.
        double[] days = [.. Enumerable.Repeat(0.0, 70), 30, 0, 30, 0, 60];
        var use = DailyUse.From(days);

        Assert.Equal(2, use.PerDay, 9);
        Assert.Equal(3, use.Deviation, 9);
        Assert.True(use.IsLittleData);
    }

    [Fact]
    public void No_day_or_a_negative_one_is_refused()
    {
        Assert.Throws<ArgumentException>(() => DailyUse.From([]));
        Assert.Throws<ArgumentException>(() => DailyUse.From([5, -1]));
    }

    [Theory]
    [InlineData(4, false)]      // one day in four: deviation / mean = √3 = 1.73
    [InlineData(7, true)]       // one day in seven: √6 = 2.45
    public void Use_on_few_days_comes_in_lumps(int every, bool isLumpy) =>
        Assert.Equal(isLumpy, DailyUse.From([.. Enumerable.Range(0, 56).Select(day => day % every == 0 ? 30.0 : 0)]).IsLumpy);
}
