using StudioBot.Craft.Stock;

namespace StudioBot.Craft.Tests.Stock;

public sealed class CoverSpanTests
{
    // Worked by hand: z = 1.28155; z²σ² = 1.6424 x 171.82 = 282.20; a = 56.25 - 282.20 / 56 = 51.211;
    // b = 2 x 130 x 7.5 + 282.20 = 2232.20; b² - 4 x 51.211 x 130² = 1 520 900, its root 1233.2;
    // 2 x 130² / 3465.4 = 9.753 days, 3465.4 / 102.42 = 33.83 days, around 17.3.
    [Fact]
    public void Uneven_days_make_an_interval()
    {
        var span = CoverSpan.Of(130, new DailyUse(7.5, 13.108), 56);

        Assert.Equal(9.753, span.Earliest.TotalDays, 0.01);
        Assert.Equal(33.83, span.Latest!.Value.TotalDays, 0.05);
    }

    [Fact]
    public void Even_days_make_none()
    {
        var span = CoverSpan.Of(130, new DailyUse(10, 0), 56);

        Assert.Equal((13.0, 13.0), (span.Earliest.TotalDays, span.Latest!.Value.TotalDays));
    }

    [Fact]
    public void Few_and_uneven_days_leave_its_end_open() =>        // d² = 100 is less than z²σ²/n = 1.6424 x 3600 / 14
        Assert.Null(CoverSpan.Of(130, new DailyUse(10, 60), 14).Latest);

    [Theory]
    [InlineData(10, 5)]
    [InlineData(430, 22)]
    [InlineData(2000, 40)]
    public void It_holds_level_over_use(double level, double deviation)
    {
        var span = CoverSpan.Of(level, new DailyUse(35, deviation), 56);

        Assert.InRange(level / 35, span.Earliest.TotalDays, span.Latest!.Value.TotalDays);
    }

    [Fact]
    public void Nothing_lasts_no_time() => Assert.Equal(TimeSpan.Zero, CoverSpan.Of(0, new DailyUse(10, 5), 56).Earliest);

    [Fact]
    public void More_days_looked_at_make_it_narrower()
    {
        var (weeks, months) = (CoverSpan.Of(500, new DailyUse(10, 8), 56), CoverSpan.Of(500, new DailyUse(10, 8), 182));

        Assert.True(months.Earliest > weeks.Earliest && months.Latest < weeks.Latest);
    }

    [Fact]
    public void Without_use_or_on_less_than_nothing_there_is_none()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => CoverSpan.Of(10, new DailyUse(0, 0), 56));
        Assert.Throws<ArgumentOutOfRangeException>(() => CoverSpan.Of(-1, new DailyUse(1, 0), 56));
    }
}
