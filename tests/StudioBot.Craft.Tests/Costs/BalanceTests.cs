using CsCheck;
using StudioBot.Craft.Costs;

namespace StudioBot.Craft.Tests.Costs;

public sealed class BalanceTests
{
    private static readonly Gen<SharedCost> Cost =
        Gen.Select(Gen.Long[1, 6], Gen.Long[-5000, 50_000], Gen.Decimal[0.1m, 100m].Array[1, 6],
            (payer, cents, weights) => new SharedCost(payer, new Money(cents), [.. weights.Select((weight, i) => new CostShare(i + 1, weight))]));

    private static readonly Gen<Transfer> Paid =
        Gen.Select(Gen.Long[1, 6], Gen.Long[1, 6], Gen.Long[1, 10_000], (from, to, cents) =>
            new Transfer(from, to, new Money(cents)));

    [Fact]
    public void All_balances_together_are_always_zero() =>
        Gen.Select(Cost.Array[0, 30], Paid.Array[0, 10]).Sample((costs, paid) =>
            Balance.Of(costs, paid).Sum(balance => balance.Sum.Cents) == 0);

    [Fact]
    public void Settling_leaves_nobody_owing_with_fewer_payments_than_members() =>
        Gen.Select(Cost.Array[1, 30], Paid.Array[0, 10]).Sample((costs, paid) =>
        {
            var before = Balance.Of(costs, paid);
            var settled = Balance.Settle(before);
            return Balance.Of(costs, [.. paid, .. settled]).All(balance => balance.Sum.Cents == 0)
                && settled.Count <= Math.Max(0, before.Count - 1)
                && settled.All(transfer => transfer.Amount.Cents > 0);
        });

    [Fact]
    public void Who_paid_for_three_is_owed_by_two()
    {
        // 30.00 by three equal shares: 10.00 each.
        var balances = Balance.Of(
            [new SharedCost(1, Money.From(30), [new(1, 1), new(2, 1), new(3, 1)])],
            [new Transfer(2, 1, Money.From(10))]);

        Assert.Equal(
            [new Balance(1, Money.From(10)), new Balance(2, default), new Balance(3, Money.From(-10))], balances);
        Assert.Equal([new Transfer(3, 1, Money.From(10))], Balance.Settle(balances));
    }

    [Fact]
    public void Balances_that_do_not_cancel_are_refused() =>
        Assert.Throws<ArgumentException>(() => Balance.Settle([new Balance(1, Money.From(10))]));
}
