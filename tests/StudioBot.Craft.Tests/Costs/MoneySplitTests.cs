using CsCheck;
using StudioBot.Craft.Costs;

namespace StudioBot.Craft.Tests.Costs;

public sealed class MoneySplitTests
{
    private static readonly Gen<decimal[]> Weights =
        Gen.Decimal[0.001m, 1000m].Array[1, 12];

    [Fact]
    public void A_split_loses_no_cent() =>
        Gen.Select(Gen.Long[-10_000_000, 10_000_000], Weights).Sample((cents, weights) =>
            new Money(cents).Split(weights).Sum(share => share.Cents) == cents);

    [Fact]
    public void Nobody_is_a_whole_cent_off_their_quota() =>
        Gen.Select(Gen.Long[0, 10_000_000], Weights).Sample((cents, weights) =>
        {
            var whole = weights.Sum();
            return new Money(cents).Split(weights)
                .Zip(weights, (share, weight) => Math.Abs(share.Cents - cents * weight / whole))
                .All(off => off < 1.000001m);
        });

    [Fact]
    public void A_credit_is_split_as_a_debt_is() =>
        Gen.Select(Gen.Long[0, 10_000_000], Weights).Sample((cents, weights) =>
            new Money(-cents).Split(weights).SequenceEqual(new Money(cents).Split(weights).Select(share => -share)));

    [Fact]
    public void Who_weighs_nothing_pays_nothing() =>
        Assert.Equal([new Money(0), new Money(1000), new Money(0)], new Money(1000).Split([0, 3, 0]));

    [Fact]
    public void A_tie_goes_to_the_first() =>
        Assert.Equal([new Money(1), new Money(0), new Money(0), new Money(0)], new Money(1).Split([1, 1, 1, 1]));

    [Fact]
    public void Weights_of_many_digits_are_exact() =>
        // A third by 28 digits against two thirds: the last digit decides who gets the odd cent.
        Assert.Equal([new Money(34), new Money(66)],
            new Money(100).Split([0.3350000000000000000000000001m, 0.6649999999999999999999999999m]));

    [Fact]
    public void All_weights_zero_is_refused()
    {
        Assert.Throws<ArgumentException>(() => new Money(100).Split([0, 0]));
        Assert.Throws<ArgumentException>(() => new Money(100).Split([]));
        Assert.Throws<ArgumentException>(() => new Money(100).Split([2, -1]));
    }
}
