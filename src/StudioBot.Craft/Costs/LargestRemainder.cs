using System.Numerics;

namespace StudioBot.Craft.Costs;

/// <summary>Splits whole units by weights without losing one (Hamilton, largest remainder).</summary>
internal static class LargestRemainder
{
    public static long[] Split(long total, IReadOnlyList<decimal> weights)
    {
        var whole = Whole(weights);
        var sum = whole.Aggregate(BigInteger.Zero, (all, weight) => all + weight);
        if (whole.Any(weight => weight.Sign < 0) || sum.IsZero)
        {
            throw new ArgumentException("Weights are zero or more, and one of them is more.", nameof(weights));
        }

        var amount = BigInteger.Abs(total);
        var shares = new BigInteger[whole.Length];
        var remainders = new BigInteger[whole.Length];
        for (var i = 0; i < whole.Length; i++)
        {
            shares[i] = BigInteger.DivRem(amount * whole[i], sum, out remainders[i]);
        }

        var missing = (int)(amount - shares.Aggregate(BigInteger.Zero, (all, share) => all + share));
        foreach (var i in Enumerable.Range(0, whole.Length).OrderByDescending(i => remainders[i]).Take(missing))
        {
            shares[i]++;
        }

        return [.. shares.Select(share => (long)(total < 0 ? -share : share))];
    }

    /// <summary>The weights, all scaled alike to whole numbers.</summary>
    private static BigInteger[] Whole(IReadOnlyList<decimal> weights)
    {
        var places = weights.Count == 0 ? 0 : weights.Max(weight => weight.Scale);
        return [.. weights.Select(weight => Digits(weight) * BigInteger.Pow(10, places - weight.Scale))];
    }

    /// <summary>The weight without its decimal point; a decimal keeps 96 bits of digits and its sign apart.</summary>
    private static BigInteger Digits(decimal weight)
    {
        var bits = decimal.GetBits(weight);
        var digits = ((BigInteger)(uint)bits[2] << 64) | ((BigInteger)(uint)bits[1] << 32) | (uint)bits[0];
        return weight < 0 ? -digits : digits;
    }
}
