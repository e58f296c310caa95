using StudioBot.Craft.Costs;
using StudioBot.Craft.Stock;

namespace StudioBot.Craft.Tests.Whole.Checks;

internal static class StockChecks
{
    public static readonly IReadOnlyDictionary<string, Func<Inputs, string>> All =
        new Dictionary<string, Func<Inputs, string>>
        {
            ["stock.reorder_point"] = given => Answer.Number(ReorderPoint.Plain(Use(given), Lead(given), Level(given))),
            ["stock.reorder_point_variable_lead"] = given =>
                Answer.Number(ReorderPoint.Plain(Use(given), Lead(given), Level(given))),
            ["stock.reorder_point_skewed"] = given =>
                Answer.Number(ReorderPoint.Of(Use(given), Lead(given), Level(given))),
            ["stock.days_of_cover"] = given => Answer.Of(
                Forecast.DaysOfCover(given.Number("level"), new DailyUse(given.Number("per_day"), 0)),
                time => time.TotalDays),
            ["stock.z"] = given => Answer.Number(ServiceLevel.FromShare(given.Number("service")).Deviations),
            ["stock.packs"] = given => Answer.List(Cover(given).Counts.Select(count => (double)count)),
            ["stock.packs_cost"] = given => Answer.Number((double)Cover(given).Cost.Sum),
            ["stock.average_price"] = given => Answer.Number((double)Valuing.AveragePrice(Lots(given))),
            ["stock.fifo_cost"] = given =>
                Answer.Number((double)Valuing.OldestFirst(Lots(given), (decimal)given.Number("issue")).Cost),
            ["stock.average_cost"] = given =>
                Answer.Number((double)Valuing.ByAverage(Lots(given), (decimal)given.Number("issue")).Cost),
        };

    private static DailyUse Use(Inputs given) => new(given.Number("per_day"), given.Number("sigma_day"));

    private static LeadTime Lead(Inputs given) =>
        new(given.Number("lead_days"), given.Has("sigma_lead") ? given.Number("sigma_lead") : 0);

    private static ServiceLevel Level(Inputs given) => ServiceLevel.FromDeviations(given.Number("z"));

    private static Purchase Cover(Inputs given) => ShoppingList.Cover(
        (long)given.Number("need_mL"),
        [.. given.Numbers("packs_mL").Zip(
            given.Numbers("prices"), (size, price) => new Pack((int)size, Money.From((decimal)price)))]);

    private static IReadOnlyList<PricedLot> Lots(Inputs given) =>
        [.. given.Texts("lots").Select(lot => lot.Split('@')).Select(lot => new PricedLot(
            (decimal)Inputs.Parse(lot[0]), (decimal)Inputs.Parse(lot[1])))];
}
