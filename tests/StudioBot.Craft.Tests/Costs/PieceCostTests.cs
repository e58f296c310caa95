using CsCheck;
using StudioBot.Craft.Costs;

namespace StudioBot.Craft.Tests.Costs;

public sealed class PieceCostTests
{
    [Fact]
    public void The_lines_make_the_total() =>
        Gen.Select(Gen.Long[0, 100_000], Gen.Int[0, 1000], Gen.Long[0, 9_999], Gen.Long[0, 9_999]).Sample(
            (materials, minutes, rate, overhead) =>
            {
                var cost = new PieceCost(
                    new Money(materials),
                    TimeSpan.FromMinutes(minutes),
                    new Money(rate),
                    new Money(overhead),
                    new Money(150));
                return cost.Total == cost.Materials + cost.Work + cost.Overhead;
            });

    [Fact]
    public void Twenty_minutes_at_ten_an_hour_are_rounded_once() =>
        // 10.00/3 = 3.333…
        Assert.Equal(Money.From(3.33m), new PieceCost(default, TimeSpan.FromMinutes(20), Money.From(10)).Work);

    [Fact]
    public void Labour_is_never_negative() => Assert.Throws<InvalidOperationException>(
        () => new PieceCost(default, TimeSpan.FromMinutes(-1), Money.From(10)).Work);
}
