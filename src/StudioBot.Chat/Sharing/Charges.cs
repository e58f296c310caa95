using StudioBot.Craft.Costs;
using StudioBot.Records.Ledger;
using StudioBot.Records.Materials;
using StudioBot.Records.Stock;

namespace StudioBot.Chat.Sharing;

/// <summary>Books as money what a record moved on the shelf: who used it is charged with what it had cost, and what
/// nobody took alone is borne by the studio's rule.</summary>
/// <remarks>The studio's account is minus what members paid for and nobody was charged with: what lies on the shelf and
/// what was lost and borne by nobody; less what is its own, as what it was given or what use of a find was charged. A
/// price that was paid is booked by who says so; what the books opened with was nobody's, and using it is charged.
/// </remarks>
internal static class Charges
{
    /// <summary>Books them.</summary>
    /// <returns>What was booked, in words; none where nothing was, and where anybody may read them.</returns>
    public static string? Book(Writing writing)
    {
        if (!writing.HasAct)
        {
            return null;
        }

        var lines = writing.Session.Stock.Of(writing.Act);
        if (lines.Count == 0)
        {
            return null;
        }

        var materials = writing.Session.Materials.All().ToDictionary(material => material.Id);
        var own = Sum(lines.Where(line => IsOwn(line, materials[line.MaterialId])));
        var borne = lines.Where(line => IsShared(line, materials[line.MaterialId])).ToList();
        List<MoneyLine> shared = [.. borne
            .GroupBy(line => line.MaterialId)
            .SelectMany(same => SharingRule.Split(Sum(same), materials[same.Key], writing.Act, writing.Session))];

        // What was found in order to be used is the studio's: who uses it pays for it.
        if (writing.Act.Kind == CountCommand.Word)
        {
            var counted = lines.Where(line => line.Reason == StockReason.Counted).ToList();
            borne.AddRange(counted);
            shared.AddRange(counted.Select(line => line.MaterialId).Distinct()
                .SelectMany(id => CountShares.Of(materials[id], writing)));
        }

        Book([new MoneyLine(new Account.OfMember(writing.Whose.Id), own), .. shared], writing);
        return Said(own, Sum(borne), new Money(shared.Sum(line => line.Sum.Cents)), writing);
    }

    private static bool IsOwn(StockLine line, Material material) => line.Reason switch
    {
        // What a mixture took and what it became are worth the same, unless it stands in no stock of its own.
        StockReason.Mixed or StockReason.Made => true,
        StockReason.Used or StockReason.Poured or StockReason.Coated or StockReason.Returned => !material.IsShared,
        _ => false,
    };

    private static bool IsShared(StockLine line, Material material) => line.Reason switch
    {
        StockReason.Binned => true,
        StockReason.Used or StockReason.Poured or StockReason.Coated or StockReason.Returned => material.IsShared,
        _ => false,
    };

    private static Money Sum(IEnumerable<StockLine> lines) => lines.Aggregate(
        default(Money), (sum, line) => line.Fills ? sum + line.Worth : sum - line.Worth);

    private static void Book(IReadOnlyList<MoneyLine> lines, Writing writing)
    {
        List<MoneyLine> members = [.. lines.GroupBy(line => line.Account)
            .Select(same => new MoneyLine(same.Key, new Money(same.Sum(line => line.Sum.Cents))))
            .Where(line => line.Sum != default)];
        var all = members.Aggregate(default(Money), (sum, line) => sum + line.Sum);
        if (all != default)
        {
            members.Add(new MoneyLine(new Account.OfStudio(), -all));
        }

        writing.Session.Money.Book(writing.Act, members);
    }

    private static string? Said(Money own, Money shared, Money onMembers, Writing writing)
    {
        if (writing.Turn.Chat == ChatKind.Group)
        {
            return null;
        }

        List<string> words = [];
        if (own != default)
        {
            words.Add(own < default(Money)
                ? $"{-own} on {writing.Whose.Name}'s account"
                : $"{own} back on {writing.Whose.Name}'s account");
        }

        var rule = SharingRule.Of(writing.Session);
        if (onMembers != default)
        {
            var how = rule == SharingRule.Nobody ? "as before" : SharingRule.Said(rule);
            words.Add($"{(onMembers < default(Money) ? $"{-onMembers} borne" : $"{onMembers} given back")} {how}");
        }

        var rest = shared - onMembers;
        if (rest < default(Money))
        {
            words.Add($"{-rest} borne by nobody; it stays with the studio");
        }
        else if (rest > default(Money))
        {
            words.Add($"{rest} found stays with the studio");
        }

        return words.Count == 0 ? null : $"Booked: {string.Join("; ", words)}.";
    }
}
