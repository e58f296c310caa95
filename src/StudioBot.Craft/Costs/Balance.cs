namespace StudioBot.Craft.Costs;

/// <summary>How a member stands: above zero the others owe them. All balances together are always zero.</summary>
public sealed record Balance(long Member, Money Sum)
{
    /// <summary>Where everybody stands after these costs and payments, by member.</summary>
    /// <exception cref="ArgumentException">A cost has no share above zero, or one below.</exception>
    public static IReadOnlyList<Balance> Of(IEnumerable<SharedCost> costs, IEnumerable<Transfer> paid)
    {
        var sums = new SortedDictionary<long, Money>();
        foreach (var cost in costs)
        {
            Add(sums, cost.PaidBy, cost.Amount);
            var shares = cost.Amount.Split([.. cost.Shares.Select(share => share.Weight)]);
            for (var i = 0; i < shares.Count; i++)
            {
                Add(sums, cost.Shares[i].Member, -shares[i]);
            }
        }

        foreach (var transfer in paid)
        {
            Add(sums, transfer.From, transfer.Amount);
            Add(sums, transfer.To, -transfer.Amount);
        }

        return [.. sums.Select(sum => new Balance(sum.Key, sum.Value))];
    }

    /// <summary>Payments that bring every balance to zero, at most one fewer than there are members.</summary>
    /// <exception cref="ArgumentException">The balances do not add up to zero.</exception>
    public static IReadOnlyList<Transfer> Settle(IReadOnlyList<Balance> balances)
    {
        if (balances.Sum(balance => balance.Sum.Cents) != 0)
        {
            throw new ArgumentException("Balances add up to zero.", nameof(balances));
        }

        var left = balances.ToDictionary(balance => balance.Member, balance => balance.Sum.Cents);
        List<Transfer> transfers = [];
        while (left.Values.Any(cents => cents != 0))
        {
            var debtor = left.OrderBy(entry => entry.Value).ThenBy(entry => entry.Key).First().Key;
            var creditor = left.OrderByDescending(entry => entry.Value).ThenBy(entry => entry.Key).First().Key;
            var cents = Math.Min(-left[debtor], left[creditor]);
            transfers.Add(new Transfer(debtor, creditor, new Money(cents)));
            left[debtor] += cents;
            left[creditor] -= cents;
        }

        return transfers;
    }

    private static void Add(SortedDictionary<long, Money> sums, long member, Money sum) =>
        sums[member] = sums.GetValueOrDefault(member) + sum;
}
