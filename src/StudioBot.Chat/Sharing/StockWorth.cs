using StudioBot.Chat.Asking;
using StudioBot.Chat.Replies;
using StudioBot.Craft.Costs;
using StudioBot.Craft.Stock;
using StudioBot.Records.Materials;

namespace StudioBot.Chat.Sharing;

/// <summary>What the lots on hand are worth, and on average.</summary>
internal static class StockWorth
{
    private const int Thousand = 1000;

    /// <summary>Worth 33.00 EUR, on average 22.00 a litre; none where no lot has a price.</summary>
    public static string? Words(Material material, IReadOnlyList<Lot> lots, Studio studio)
    {
        List<PricedLot> priced = [.. lots
            .Where(lot => lot.Price is not null && Need.UnitsOf(lot.Bought) > 0)
            .Select(lot => new PricedLot(
                (decimal)Need.UnitsOf(lot.Left),
                lot.Price!.Value.Sum / (decimal)Need.UnitsOf(lot.Bought)))];
        if (priced.Count == 0)
        {
            return null;
        }

        var average = Valuing.AveragePrice(priced);
        var worth = Money.Rounded((double)(average * priced.Sum(lot => lot.Left)));
        var each = material.Form switch
        {
            MaterialForm.Counted => $"{Show.Significant((double)average)} each",
            MaterialForm.Powder => $"{Money.Rounded((double)average * Thousand)} a kilogram",
            _ => $"{Money.Rounded((double)average * Thousand)} a litre",
        };
        var without = priced.Count < lots.Count ? ", lots without a price left out" : "";
        return $"Worth {worth} {studio.View.Studio.Settings()?.Currency}".TrimEnd() + $", on average {each}{without}.";
    }
}
