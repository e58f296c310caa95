using StudioBot.Chat.Replies;
using StudioBot.Chat.Sharing;
using StudioBot.Craft.Costs;

namespace StudioBot.Chat.Asking;

/// <summary>What is needed beyond what stands on the shelf, mixtures by their parts, in packs.</summary>
/// <param name="Needs">All that is needed, with what is here.</param>
/// <param name="Buys">What to buy, each in a few words with its cost where packs are known.</param>
/// <param name="Mixes">Mixtures to make from what is here or bought.</param>
/// <param name="Unknown">What the studio has no material for.</param>
internal sealed record Shopping(
    IReadOnlyList<(Need Need, Need Here)> Needs,
    IReadOnlyList<(string Name, string Packs, Money? Cost)> Buys,
    IReadOnlyList<Need> Mixes,
    IReadOnlyList<string> Unknown)
{
    private const int MostRows = 6;

    /// <summary>What to buy for these needs.</summary>
    /// <param name="needs">What is needed.</param>
    /// <param name="studio">On whose shelf.</param>
    /// <param name="reserved">What others have set aside there; none: it is not looked at.</param>
    public static Shopping Of(PourNeeds needs, Studio studio, ILookup<long, Reservation>? reserved = null)
    {
        var here = studio.View.Materials.Levels().ToDictionary(
            level => level.MaterialId,
            level => Math.Max(
                Need.UnitsOf(level.Left) - (reserved?[level.MaterialId].Sum(one => one.Units) ?? 0), 0));
        var raw = new PourNeeds(studio);
        List<Need> mixes = [];
        foreach (var need in needs.All)
        {
            var parts = StockCost.PartsOf(need, studio);
            var lacking = need.Units - here.GetValueOrDefault(need.Material.Id);
            if (parts.Count == 1 && parts[0].Material.Id == need.Material.Id)
            {
                raw.Add(need.Material.Name, need.Units);
            }
            else if (lacking > 0)
            {
                mixes.Add(need with { Units = lacking });
                foreach (var part in StockCost.PartsOf(need with { Units = lacking }, studio))
                {
                    raw.Add(part.Material.Name, part.Units);
                }
            }
        }

        return new Shopping(
            [.. needs.All.Select(need => (need, need with { Units = here.GetValueOrDefault(need.Material.Id) }))],
            [.. raw.All
                .Select(need => need with { Units = need.Units - here.GetValueOrDefault(need.Material.Id) })
                .Where(need => need.Units > 0)
                .Select(Buy)],
            mixes,
            needs.Unknown);
    }

    /// <summary>In one line, against the shelf.</summary>
    public string Short(Studio studio)
    {
        var invented = Sentences.Invented(studio);
        var unknown = Unknown.Count > 0 ? $" Not among the materials: {string.Join(", ", Unknown)}." : "";
        return (Buys.Count switch
        {
            0 when Unknown.Count > 0 => "All the rest is here.",
            0 => "To buy: nothing, the shelf holds it.",
            1 => $"To buy: {Buys[0].Packs} {Buys[0].Name}.",
            2 => $"To buy: {Buys[0].Packs} {Buys[0].Name}, {Buys[1].Packs} {Buys[1].Name}.",
            _ => $"To buy: {Buys[0].Packs} {Buys[0].Name} and {Buys.Count - 1} more.",
        }) + unknown + invented;
    }

    /// <summary>The whole list.</summary>
    public Reply Show(Studio studio)
    {
        var currency = studio.View.Studio.Settings()?.Currency ?? "";
        var cost = new Money(Buys.Sum(buy => buy.Cost?.Cents ?? 0));
        List<Block> blocks = [new Block.Headline(Buys.Count == 0 ? "Nothing to buy" : $"To buy, {cost} {currency}")];
        List<Figure> rows = [.. Buys.Select(buy => new Figure(buy.Name, buy.Packs))];
        var bought = Buys.Select(buy => buy.Name).ToHashSet();
        rows.AddRange(Needs.Where(need => !bought.Contains(need.Need.Material.Name))
            .OrderByDescending(need => need.Need.Units / Math.Max(need.Here.Units, 1))
            .Select(need => new Figure(need.Need.Material.Name, $"{Words(need.Need)} of {Words(need.Here)}")));
        if (rows.Count > 0)
        {
            blocks.Add(new Block.Figures([.. rows.Take(MostRows)]));
        }

        if (rows.Count > MostRows)
        {
            blocks.Add(new Block.Line($"Also {string.Join(", ", rows.Skip(MostRows).Select(row => row.Name))}."));
        }

        if (Mixes.Count > 0)
        {
            var mixes = Mixes.Select(mix => $"{Words(mix)} {mix.Material.Name}");
            blocks.Add(new Block.Line($"Mix first: {string.Join(", ", mixes)}."));
        }

        var unknown = Unknown.Count > 0 ? $"Not among the materials: {string.Join(", ", Unknown)}. " : "";
        blocks.Add(new Block.Line(
            $"{unknown}“Of” is what is here; the rest in the cheapest packs.{Sentences.Invented(studio)}"));
        return new Reply(blocks);
    }

    private static (string Name, string Packs, Money? Cost) Buy(Need need)
    {
        var packs = PackChoice.Of(need);
        return (need.Material.Name, packs.Words, packs.Cost);
    }

    private static string Words(Need need) => PackChoice.Measured(need);
}
