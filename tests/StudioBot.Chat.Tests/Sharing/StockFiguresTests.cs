using System.Globalization;
using System.Text.RegularExpressions;
using StudioBot.Chat.Tests.Support;

namespace StudioBot.Chat.Tests.Sharing;

/// <summary>The trade's check values for stock, read off replies: as exact as a reply rounds.</summary>
public sealed class StockFiguresTests : IDisposable
{
    private readonly LiveStudio _studio = LiveStudio.Empty();

    public void Dispose() => _studio.Dispose();

    // STK-12: 12 a day with a deviation of 22, over seven days of delivery and the day of the order: 215.193.
    // Fourteen days of 56 have all the use, 672 ml: seven of 61.169 and seven of 34.831 ml, so that the squares add up
    // to 55 x 22² + 56 x 12² = 34 684.
    [Fact]
    public void The_reorder_point_of_uneven_use()
    {
        EightWeeks(2000, day => day % 8 == 3 ? "61.169" : "34.831");

        var said = _studio.Hear("buy saffron");

        Assert.Equal(12, Figure(said, "A day takes"), 0.005);
        Assert.Equal(215.193, Figure(said, "Reorder point"), 0.05 + 0.05);
        Assert.Contains(" at 12 ml a day", _studio.Hear("stock saffron").Replace('\n', ' '), StringComparison.Ordinal);
    }

    // STK-01: 103.2406 units at 29 a day with a deviation of 5.7 over three days (an inventory course's exercise).
    // STK-02: 340.7497 ml at 35 with 22 over seven days (inventory textbooks). The days alternate between mean + a and
    // mean - a, a being the deviation times the root of 55/56, so that the sample deviation over 56 days is exact.
    // STK-05: the normal quantile of 95 %, 1.6449 (normal tables), stands between the point and the mean.
    [Theory]
    [InlineData(29, 5.7, 3, 103.240574)]
    [InlineData(35, 22, 7, 340.74974)]
    public void The_reorder_point_of_even_use(double mean, double deviation, int days, double expected)
    {
        _studio.Tells("material new saffron 250 ml 6.90");
        _studio.Tells($"material saffron delivery {days} days");
        _studio.Tells("bought 3000 ml saffron 50.00");
        var (first, swing) = (_studio.Now, deviation * Math.Sqrt(55.0 / 56));
        for (var day = 0; day < 56; day++)
        {
            _studio.Now = first.AddDays(day);
            var use = mean + (day % 2 == 0 ? swing : -swing);
            _studio.Tells($"used {use.ToString("0.000", CultureInfo.InvariantCulture)} ml saffron");
        }

        var said = _studio.Hear("buy saffron").Replace('\n', ' ');
        var point = Figure(said, "it would be");

        Assert.Equal(mean, Figure(said, "A day takes"), 0.005);
        Assert.Equal(expected, point, 0.05 + 0.05);
        Assert.Equal(1.644854, (point - mean * days) / (deviation * Math.Sqrt(days)), 0.001 + 0.05 / deviation / Math.Sqrt(days));
    }

    // STK-09: 1000 ml at 0.0200 and 500 ml at 0.0260 are 0.0220 a millilitre (weighted average), 33.00 in all.
    [Fact]
    public void The_average_price_of_what_is_left()
    {
        _studio.Tells("material new saffron 250 ml 6.90");
        _studio.Tells("bought 1000 ml saffron 20.00");
        _studio.Tells("bought 500 ml saffron 13.00");

        var said = _studio.Hear("stock saffron").Replace('\n', ' ');

        Assert.Contains("Worth 33.00 EUR", said, StringComparison.Ordinal);
        Assert.Equal(0.022, Figure(said, "on average") / 1000, 0.00001);
    }

    // STK-04: 430 ml at 35 a day are 12.29 days, shown as whole ones.
    [Fact]
    public void The_days_of_cover()
    {
        EightWeeks(2390, _ => "140");

        Assert.Equal(12.2857, Figure(_studio.Hear("buy saffron"), "Lasts about") + 0.5, 0.5);
        Assert.Contains("Lasts about 12 days", _studio.Hear("stock saffron").Replace('\n', ' '), StringComparison.Ordinal);
    }

    // STK-06, STK-07: 1300 ml are two of 250 and one of 1000, 33.70. STK-08: 2100 ml are one of 2500, 44.00.
    // Nothing is on the shelf, and 1.25 times the low level is wanted: 1040 and 1680 ml.
    [Theory]
    [InlineData(1040, "Buy saffron: 2 x 250 ml + 1 x 1000 ml, 33.70 EUR")]
    [InlineData(1680, "Buy saffron: 1 x 2500 ml, 44.00 EUR")]
    public void The_cheapest_packs(int low, string expected)
    {
        _studio.Tells("material new saffron 250 ml 6.90");
        _studio.Tells("material saffron pack 1000 ml 19.90");
        _studio.Tells("material saffron pack 2500 ml 44.00");
        _studio.Tells($"material saffron low {low} ml");

        Assert.StartsWith(expected, _studio.Hear("buy saffron").Replace('\n', ' '), StringComparison.Ordinal);
    }

    private static double Figure(string said, string name) => double.Parse(
        Regex.Match(said, name + @" +([\d.]+)").Groups[1].Value, CultureInfo.InvariantCulture);

    // 56 days with today, used on each fourth of them.
    private void EightWeeks(int bought, Func<int, string> uses)
    {
        _studio.Tells("material new saffron 250 ml 6.90");
        _studio.Tells($"bought {bought} ml saffron 50.00");
        var first = _studio.Now;
        for (var day = 3; day < 56; day += 4)
        {
            _studio.Now = first.AddDays(day);
            _studio.Tells($"used {uses(day)} ml saffron");
        }
    }
}
