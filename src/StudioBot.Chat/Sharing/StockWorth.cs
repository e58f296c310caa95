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
    /// <param name="material">Of which.</param>
    /// <param name="lots">Those with something left.</param>
    /// <param name="studio">Whose money.</param>
    public static string? Words(Material material, IReadOnlyList<Lot> lots, Studio studio)
    {
        List<Lot> worthy = [.. lots.Where(lot => lot.Price is not null || lot.Worth.Cents > 0)];
        if (worthy.Count == 0)
        {
            return null;
        }

        var worth = worthy.Aggregate(default(Money), (sum, lot) => sum + lot.Worth);
        var average = Valuing.AveragePrice([.. worthy.Select(Priced)]);
        var each = material.Form switch
        {
            MaterialForm.Counted => $"{Show.Significant((double)average)} each",
            MaterialForm.Powder => $"{Money.Rounded((double)average * Thousand)} a kilogram",
            _ => $"{Money.Rounded((double)average * Thousand)} a litre",
        };
        var without = worthy.Count < lots.Count ? ", lots without a price left out" : "";
        return $"Worth {worth} {studio.View.Studio.Settings()?.Currency}".TrimEnd() + $", on average {each}{without}.";
    }

    private static PricedLot Priced(Lot lot)
    {
        var left = (decimal)Need.UnitsOf(lot.Left);
        return new PricedLot(left, lot.Worth.Sum / left);
    }
}
