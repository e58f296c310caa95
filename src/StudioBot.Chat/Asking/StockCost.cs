using StudioBot.Craft.Costs;
using StudioBot.Craft.Stock;
using StudioBot.Records.Materials;
using StudioBot.Records.Recipes;

namespace StudioBot.Chat.Asking;

/// <summary>What needs cost at stock prices: the oldest lots first, then packs; a mixture by its recipe.</summary>
/// <param name="Rows">Each material with its cost in units of the currency, unrounded, the dearest first.</param>
/// <param name="Unpriced">Materials that have no price here.</param>
internal sealed record StockCost(IReadOnlyList<(string Name, decimal Cost)> Rows, IReadOnlyList<string> Unpriced)
{
    // A recipe may hold a mixture; none holds itself through more than a few others.
    private const int Deepest = 5;

    /// <summary>All together, rounded once.</summary>
    public Money Total => Money.Rounded((double)Rows.Sum(row => row.Cost));

    /// <summary>The cost of these needs.</summary>
    public static StockCost Of(IReadOnlyList<Need> needs, Studio studio)
    {
        var raw = needs.SelectMany(need => Raw(need, studio, 0))
            .GroupBy(need => need.Material.Id)
            .Select(same => new Need(same.First().Material, same.Sum(need => need.Units)))
            .Select(need => (need.Material.Name, Cost: Cost(need, studio)))
            .ToList();
        return new StockCost(
            [.. raw
                .Where(row => row.Cost is not null)
                .Select(row => (row.Name, row.Cost!.Value))
                .OrderByDescending(row => row.Value)],
            [.. raw.Where(row => row.Cost is null).Select(row => row.Name)]);
    }

    /// <summary>What a litre or a kilogram of a material costs; none where something in it has no price.</summary>
    public static Money? PerThousand(Material material, Studio studio) =>
        Of([new Need(material, 1000)], studio) is { Unpriced: [] } cost ? cost.Total : null;

    /// <summary>The parts that so much of a mixture is made of; the need itself where no recipe makes it.</summary>
    public static IReadOnlyList<Need> PartsOf(Need need, Studio studio)
    {
        var recipe = need.Material.Form == MaterialForm.Mixture
            ? studio.View.Recipes.All().FirstOrDefault(one => one.Makes == need.Material.Name)
            : null;
        var whole = recipe is null ? 0 : Poured(recipe);
        if (whole <= 0)
        {
            return [need];
        }

        var materials = studio.View.Materials.All();
        return [.. recipe!.Parts.Select(part => new Need(
            materials.First(material => material.Id == part.MaterialId),
            need.Units * Need.UnitsOf(part.Amount) / whole))];
    }

    private static IEnumerable<Need> Raw(Need need, Studio studio, int depth)
    {
        var parts = PartsOf(need, studio);
        return depth == Deepest || (parts.Count == 1 && parts[0].Material.Id == need.Material.Id)
            ? [need]
            : parts.SelectMany(part => Raw(part, studio, depth + 1));
    }

    // Powders hardly add to the volume of a mixture.
    private static double Poured(Recipe recipe) =>
        recipe.Parts.Select(part => part.Amount).OfType<Amount.ByVolume>().Sum(amount => amount.Volume.Millilitres);

    private static decimal? Cost(Need need, Studio studio)
    {
        List<PricedLot> lots = [.. studio.View.Lots.Of(need.Material.Id)
            .Where(lot => lot.Price is not null && Need.UnitsOf(lot.Bought) > 0)
            .Select(lot => new PricedLot(
                (decimal)Need.UnitsOf(lot.Left),
                lot.Price!.Value.Sum / (decimal)Need.UnitsOf(lot.Bought)))];
        if (lots.Count > 0)
        {
            return Valuing.OldestFirst(lots, (decimal)need.Units).Cost;
        }

        return need.Material.Packs.Where(pack => pack.Price is not null && Need.UnitsOf(pack.Holds) > 0)
            .Select(pack => (decimal?)(pack.Price!.Value.Sum / (decimal)Need.UnitsOf(pack.Holds) * (decimal)need.Units))
            .Min();
    }
}
