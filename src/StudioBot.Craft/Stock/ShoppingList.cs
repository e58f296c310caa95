using StudioBot.Craft.Costs;

namespace StudioBot.Craft.Stock;

/// <summary>The cheapest packs that cover a need: exact, as taking the best pack first is not.</summary>
public static class ShoppingList
{
    // In steps of the sizes' common measure: 100 L in steps of 5 mL are 20 000.
    private const long MostSteps = 4_000_000;

    /// <summary>The cheapest cover; of equally cheap ones the one with less left over, then with fewer packs.</summary>
    /// <param name="need">In whole units of the material, zero or more.</param>
    /// <param name="packs">At least one, each of a size above zero and a price not below.</param>
    /// <remarks>Dynamic programming over the sums that packs can make.</remarks>
    /// <exception cref="ArgumentException">No pack, or one that can't be.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The need is below zero, or too large for its smallest
    /// packs.</exception>
    public static Purchase Cover(long need, IReadOnlyList<Pack> packs)
    {
        if (packs.Count == 0 || packs.Any(pack => pack.Size <= 0 || pack.Price.Cents < 0))
        {
            throw new ArgumentException("At least one pack, each with a size above zero and a price.", nameof(packs));
        }

        var measure = packs.Aggregate(0L, (common, pack) => Common(common, pack.Size));
        long least = (need + measure - 1) / measure, steps = least + packs.Max(pack => pack.Size) / measure;
        if (need < 0 || steps > MostSteps)
        {
            throw new ArgumentOutOfRangeException(nameof(need), need, "A need is zero or more, and fits its packs.");
        }

        int[] sizes = [.. packs.Select(pack => (int)(pack.Size / measure))];
        var best = Sums((int)steps, sizes, packs);
        var at = (int)least;
        for (var sum = at; sum < steps; sum++)
        {
            // Sums rise, so of equally cheap ones the first, with the least left over, stays.
            at = best[sum].Pack >= 0 && (best[at].Pack < 0 || best[sum].Cents < best[at].Cents) ? sum : at;
        }

        var counts = new int[packs.Count];
        var cost = best[at].Cents;
        var surplus = at * measure - need;
        for (; at > 0; at -= sizes[best[at].Pack])
        {
            counts[best[at].Pack]++;
        }

        return new Purchase(counts, new Money(cost), surplus);
    }

    /// <summary>For each sum the cheapest way to make exactly it, and of those the one with fewest packs.</summary>
    private static Sum[] Sums(int steps, int[] sizes, IReadOnlyList<Pack> packs)
    {
        var best = new Sum[Math.Max(steps, 1)];
        best[0] = new Sum(0, 0, 0);
        for (var sum = 1; sum < best.Length; sum++)
        {
            best[sum] = Sum.Unreachable;
            for (var pack = 0; pack < sizes.Length; pack++)
            {
                var before = sum - sizes[pack];
                if (before < 0 || best[before].Pack < 0)
                {
                    continue;
                }

                var with = new Sum(best[before].Cents + packs[pack].Price.Cents, best[before].Count + 1, pack);
                best[sum] = Better(with, best[sum]) ? with : best[sum];
            }
        }

        return best;
    }

    /// <summary>Cheaper, or as cheap with fewer packs.</summary>
    private static bool Better(Sum left, Sum right) =>
        right.Pack < 0 || left.Cents < right.Cents || (left.Cents == right.Cents && left.Count < right.Count);

    private static long Common(long left, long right) => right == 0 ? left : Common(right, left % right);

    private readonly record struct Sum(long Cents, int Count, int Pack)
    {
        public static readonly Sum Unreachable = new(0, 0, -1);
    }
}
