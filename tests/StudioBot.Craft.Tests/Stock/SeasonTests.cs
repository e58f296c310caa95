using StudioBot.Craft.Stock;

namespace StudioBot.Craft.Tests.Stock;

public sealed class SeasonTests
{
    [Fact]
    public void A_season_of_last_year_is_drawn_towards_no_difference()
    {
        // By hand. 30 on each fourth of 56 days: mean 7.5, deviation 13.108, variance of its logarithm (13.108 / 7.5)² / 56 = 0.0546. 60 on each
        // fourth of 35 from the first on: mean 540 / 35 = 15.43, deviation 26.61, 0.0850. exp(ln 2.057 · 0.04 / (0.04 + 0.1395)) = 1.174.
        var season = Season.Of(EachFourth(30, 56), EachFourth(60, 35))!;

        Assert.Equal(2.057, season.Seen, 3);
        Assert.Equal(1.174, season.Counted, 3);
        var over = season.Over(new DailyUse(10, 20));
        Assert.Equal((11.74, 23.49), (Math.Round(over.PerDay, 2), Math.Round(over.Deviation, 2)));
    }

    [Fact]
    public void What_was_as_before_stays_as_it_is() => Assert.Equal(1, Season.Of(EachFourth(30, 56), EachFourth(30, 36))!.Counted, 6);

    [Fact]
    public void The_more_even_the_days_were_the_more_is_believed() =>
        Assert.True(Season.Of([.. Enumerable.Repeat(7.5, 56)], [.. Enumerable.Repeat(15.0, 35)])!.Counted
            > Season.Of(EachFourth(30, 56), EachFourth(60, 36))!.Counted);

    [Fact]
    public void Few_days_with_use_say_nothing_of_a_season()
    {
        Assert.Null(Season.Of(EachFourth(30, 56), [60, 60, 60, 60, .. new double[31]]));
        Assert.Null(Season.Of([60, 60, 60, 60, .. new double[52]], EachFourth(30, 35)));
    }

    [Theory]
    [InlineData(1, 100, 2)]
    [InlineData(100, 1, 0.5)]
    public void It_at_most_doubles_or_halves(double before, double after, double counted) =>
        Assert.Equal(counted, Season.Of([.. Enumerable.Repeat(before, 56)], [.. Enumerable.Repeat(after, 35)])!.Counted);

    private static double[] EachFourth(double units, int days) => [.. Enumerable.Range(0, days).Select(day => day % 4 == 0 ? units : 0)];
}
