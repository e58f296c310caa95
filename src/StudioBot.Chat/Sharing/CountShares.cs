using StudioBot.Craft.Costs;
using StudioBot.Records.Ledger;
using StudioBot.Records.Materials;
using StudioBot.Records.Stock;

namespace StudioBot.Chat.Sharing;

/// <summary>Who gets what a count found over the book, and who bears what it missed (common practice).</summary>
/// <remarks>Counts of a material between which nothing else moved it are one run, booked as its last alone would be:
/// back at the level they began with, they moved nobody's account. A run first takes back what earlier runs of eight
/// weeks did the other way, the latest first, from or to whom each was booked: a shortage from who was given, a find to
/// who bore. Of what is left, a find gives by the rule at most what use was charged since the run before, and the rest
/// is the studio's; a shortage is borne by the rule. Under the rule by use nobody gets more than they were charged;
/// under any, who gets bears it again.</remarks>
internal static class CountShares
{
    private const long Studio = 0;

    /// <summary>What each member gains by this count of a material, kept with it.</summary>
    public static IReadOnlyList<MoneyLine> Of(Material material, Writing writing)
    {
        var (counts, act) = (writing.Session.Counts, writing.Act);
        var (id, worth) = counts.RunOf(material.Id, act);
        var runs = counts.Runs(material.Id);
        List<CountRun> earlier = [.. runs.Where(run => run.Id < id && run.At >= act.HappenedAt - SharingRule.Lately)];
        var now = new CountRun(id, act.HappenedAt, Shares(worth, earlier, material, writing));
        counts.Keep(material.Id, now, act);
        var booked = runs.FirstOrDefault(run => run.Id == id)?.Shares ?? new Dictionary<long, Money>();
        return [.. now.Shares.Keys.Union(booked.Keys).Where(member => member != Studio).Select(member => new MoneyLine(
            new Account.OfMember(member), now.Shares.GetValueOrDefault(member) - booked.GetValueOrDefault(member)))];
    }

    private static Dictionary<long, Money> Shares(
        Money worth, List<CountRun> earlier, Material material, Writing writing)
    {
        var here = writing.Session.Members.All().Select(member => member.Id).ToHashSet();
        var shares = new Dictionary<long, Money> { [Studio] = default };
        var left = worth;
        var open = Open(earlier);
        for (var at = earlier.Count - 1; at >= 0; at--)
        {
            var taken = Nearer(left, -open[at]);
            foreach (var (member, share) in Part(earlier[at], open[at], taken))
            {
                Add(member, share);
            }

            left -= taken;
        }

        var given = left > default(Money) ? SharingRule.Refund(left, material, writing) : left;
        foreach (var line in SharingRule.Split(given, material, writing.Act, writing.Session))
        {
            Add(((Account.OfMember)line.Account).MemberId, line.Sum);
            left -= line.Sum;
        }

        Add(Studio, left);
        return shares;

        // With who has left nobody settles anew.
        void Add(long member, Money share)
        {
            var whose = here.Contains(member) ? member : Studio;
            shares[whose] = shares.GetValueOrDefault(whose) + share;
        }
    }

    // What no later run took back yet of each.
    private static List<Money> Open(IReadOnlyList<CountRun> runs)
    {
        List<Money> open = [];
        foreach (var run in runs)
        {
            var left = run.Worth;
            for (var at = open.Count - 1; at >= 0; at--)
            {
                var taken = Nearer(left, -open[at]);
                open[at] += taken;
                left -= taken;
            }

            open.Add(run.Worth);
        }

        return open;
    }

    // So much of it goes back to, or comes from, whom it was booked on: differences of splits make all of it exact.
    private static IEnumerable<(long Member, Money Share)> Part(CountRun run, Money open, Money taken)
    {
        if (taken == default)
        {
            return [];
        }

        List<decimal> weights = [.. run.Shares.Values.Select(share => Math.Abs((decimal)share.Cents))];
        var after = (open + taken).Split(weights);
        return run.Shares.Keys.Zip(open.Split(weights).Zip(after, (before, then) => then - before));
    }

    // The one nearer to zero, where both are on the same side of it.
    private static Money Nearer(Money one, Money other) => Math.Sign(one.Cents) != Math.Sign(other.Cents)
        ? default
        : Math.Abs(one.Cents) < Math.Abs(other.Cents) ? one : other;
}
