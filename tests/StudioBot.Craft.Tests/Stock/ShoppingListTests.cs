using CsCheck;
using StudioBot.Craft.Costs;
using StudioBot.Craft.Stock;

namespace StudioBot.Craft.Tests.Stock;

public sealed class ShoppingListTests
{
    private static readonly Gen<Pack[]> Packs =
        Gen.Select(Gen.Int[1, 60], Gen.Int[0, 3000], (size, cents) => new Pack(size * 5, new Money(cents))).Array[1, 4];

    [Fact]
    public void An_exact_cover_is_never_dearer_than_taking_the_best_pack_first() =>
        Gen.Select(Gen.Long[0, 3000], Packs).Sample((need, packs) =>
            ShoppingList.Cover(need, packs).Cost <= Greedy(need, packs));

    [Fact]
    public void It_covers_the_need_at_the_cost_it_says() =>
        Gen.Select(Gen.Long[0, 3000], Packs).Sample((need, packs) =>
        {
            var bought = ShoppingList.Cover(need, packs);
            return bought.Counts.Zip(packs, (count, pack) => (long)count * pack.Size).Sum() == need + bought.Surplus
                && bought.Surplus >= 0
                && bought.Counts.Zip(packs, (count, pack) => count * pack.Price.Cents).Sum() == bought.Cost.Cents;
        });

    [Fact]
    public void It_is_the_best_of_all_there_are() =>
        Gen.Select(Gen.Long[0, 400], Packs).Sample((need, packs) =>
        {
            var bought = ShoppingList.Cover(need, packs[..Math.Min(2, packs.Length)]);
            return (bought.Cost.Cents, bought.Surplus, bought.Packs)
                .CompareTo(Exhaustive(need, packs[..Math.Min(2, packs.Length)])) == 0;
        });

    [Fact]
    public void Equally_cheap_leaves_less_over_then_takes_fewer_packs()
    {
        Pack[] packs = [Pack(250, 5), Pack(500, 10), Pack(600, 10)];

        Assert.Equal([0, 1, 0], ShoppingList.Cover(500, packs).Counts);
    }

    [Fact]
    public void No_need_buys_nothing() => Assert.Equal(0, ShoppingList.Cover(0, [Pack(250, 5)]).Packs);

    [Fact]
    public void A_pack_of_nothing_or_no_pack_is_refused()
    {
        Assert.Throws<ArgumentException>(() => ShoppingList.Cover(100, []));
        Assert.Throws<ArgumentException>(() => ShoppingList.Cover(100, [Pack(0, 5)]));
        Assert.Throws<ArgumentOutOfRangeException>(() => ShoppingList.Cover(-1, [Pack(10, 5)]));
        Assert.Throws<ArgumentOutOfRangeException>(() => ShoppingList.Cover(long.MaxValue / 2, [Pack(1, 5)]));
    }

    private static Money Greedy(long need, Pack[] packs)
    {
        var best = packs.MinBy(pack => pack.Price.Cents / (double)pack.Size)!;
        var whole = need / best.Size;
        var rest = need - whole * best.Size;
        var last = rest > 0
            ? packs.Min(pack => (rest + pack.Size - 1) / pack.Size * pack.Price.Cents)
            : 0;
        return new Money(whole * best.Price.Cents + last);
    }

    private static (long Cents, long Surplus, int Packs) Exhaustive(long need, Pack[] packs)
    {
        var second = packs.Length > 1 ? packs[1] : packs[0];
        var best = (long.MaxValue, long.MaxValue, int.MaxValue);
        for (var i = 0; i <= need / packs[0].Size + 1; i++)
        {
            for (var j = 0; j <= need / second.Size + 1; j++)
            {
                var surplus = (long)i * packs[0].Size + (long)j * second.Size - need;
                var bought = (i * packs[0].Price.Cents + j * second.Price.Cents, surplus, i + j);
                best = surplus >= 0 && bought.CompareTo(best) < 0 ? bought : best;
            }
        }

        return best;
    }

    private static Pack Pack(int size, decimal price) => new(size, Money.From(price));
}
