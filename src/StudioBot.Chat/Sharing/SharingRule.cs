using StudioBot.Craft.Costs;
using StudioBot.Records;
using StudioBot.Records.Ledger;
using StudioBot.Records.Materials;
using Booked = StudioBot.Records.Acts.Act;

namespace StudioBot.Chat.Sharing;

/// <summary>Who bears what nobody took alone: the difference of a count, what spoiled, gloves. Kept among the studio's
/// settings.</summary>
internal static class SharingRule
{
    /// <summary>Under which name it is kept.</summary>
    public const string Name = "sharing";

    /// <summary>By what each used of it since the last count: the usual rule (common practice).</summary>
    public const string ByUse = "use";

    /// <summary>All the same.</summary>
    public const string Equal = "equal";

    /// <summary>Nobody: it stays with the studio.</summary>
    public const string Nobody = "nobody";

    /// <summary>How far back is looked: for use, where nobody used of it since the last count, and for earlier counts.
    /// </summary>
    public static readonly TimeSpan Lately = TimeSpan.FromDays(8 * 7);

    /// <summary>The rule of this studio.</summary>
    public static string Of(StudioView view) => view.Studio.Setting(Name) ?? ByUse;

    /// <summary>As a reply says it.</summary>
    public static string Said(string rule) => rule switch
    {
        Equal => "equally",
        Nobody => "by nobody; it stays with the studio",
        _ => "by use",
    };

    /// <summary>A sum by the studio's rule: below zero it is borne, above it is given back. All of it, to the cent; the
    /// first to join has a tied cent. Empty where nobody bears it.</summary>
    public static IReadOnlyList<MoneyLine> Split(Money sum, Material material, Booked act, StudioView view)
    {
        var members = view.Members.All().OrderBy(member => member.Id).ToList();
        var rule = Of(view);
        if (rule == Nobody || members.Count == 0)
        {
            return [];
        }

        List<decimal> weights = rule == Equal
            ? []
            : Weights(sum, material, act, view, [.. members.Select(one => one.Id)]);
        var shares = sum.Split(weights.Any(weight => weight > 0) ? weights : [.. members.Select(_ => 1m)]);
        return [.. members.Zip(shares, (member, share) => new MoneyLine(new Account.OfMember(member.Id), share))];
    }

    /// <summary>How much of what a count found goes back: at most what members were charged with for use of it since
    /// the count before.</summary>
    public static Money Refund(Money found, Material material, Writing writing)
    {
        var here = writing.Session.Members.All().Select(member => member.Id).ToHashSet();
        var charged = writing.Session.Stock.UsedSinceCount(material.Id, writing.Act)
            .Where(use => here.Contains(use.Key))
            .Sum(use => Math.Max(use.Value.Cents, 0));
        return new Money(Math.Min(found.Cents, charged));
    }

    // What all use, nobody notes for themselves: there the worth of all that they used lately tells. What is given back
    // goes by what each was charged, so that nobody gets more.
    private static List<decimal> Weights(
        Money sum, Material material, Booked act, StudioView view, IReadOnlyList<long> members)
    {
        var used = material.IsShared
            ? []
            : view.Stock.UsedSinceCount(material.Id, act).ToDictionary(
                use => use.Key, use => sum > default(Money) ? use.Value.Cents : use.Value.Units);
        if (!members.Any(member => used.GetValueOrDefault(member) > 0))
        {
            used = view.Stock.WorthUsedBetween(act.HappenedAt - Lately, act.HappenedAt).ToDictionary();
        }

        return [.. members.Select(member => (decimal)Math.Max(used.GetValueOrDefault(member), 0))];
    }
}
