using StudioBot.Craft.Costs;

namespace StudioBot.Craft.Tests.Costs;

public sealed class SettlementTests
{
    [Fact]
    public void Cash_that_is_enough_settles_all()
    {
        // Worked by hand: 20 in it and 5 paid in are what the others are owed, and 3 more.
        var settled = Settlement.Of([new(1, new(1500)), new(2, new(-500)), new(3, new(700))], new Money(2000));

        Assert.Equal([new Balance(2, new(500))], settled.In);
        Assert.Equal([new Balance(1, new(1500)), new Balance(3, new(700))], settled.Out);
        Assert.Empty(settled.Left);
        Assert.Equal(new Money(300), settled.InCash);
    }

    [Fact]
    public void A_kitty_that_is_short_is_filled_first()
    {
        var settled = Settlement.Of([new(1, new(1000)), new(2, new(-600))], new Money(-200));

        Assert.Equal([new Balance(1, new(400))], settled.Out);
        Assert.Equal([new Balance(1, new(600))], settled.Left);
        Assert.Equal(default, settled.InCash);
    }

    [Fact]
    public void Nothing_is_handed_out_of_less_than_nothing()
    {
        var settled = Settlement.Of([new(1, new(1000))], new Money(-200));

        Assert.Empty(settled.Out);
        Assert.Equal(new Money(-200), settled.InCash);
    }

    [Fact]
    public void Whatever_stands_is_kept_to_the_cent()
    {
        var random = new Random(20261125);
        for (var round = 0; round < 500; round++)
        {
            List<Balance> members = [.. Enumerable.Range(1, random.Next(1, 20))
                .Select(id => new Balance(id, new Money(random.Next(-20_000, 20_000))))];
            var cash = new Money(random.Next(-5000, 50_000));

            var settled = Settlement.Of(members, cash);

            Assert.Equal(members.Sum(one => one.Sum.Cents), Cents(settled.Out) + Cents(settled.Left) - Cents(settled.In));
            Assert.Equal(cash.Cents + Cents(settled.In) - Cents(settled.Out), settled.InCash.Cents);
            Assert.True(settled.Out.Count == 0 || settled.InCash.Cents >= 0);
            Assert.True(settled.Left.Count == 0 || settled.InCash.Cents <= 0);
        }
    }

    private static long Cents(IEnumerable<Balance> sums) => sums.Sum(one => one.Sum.Cents);
}
