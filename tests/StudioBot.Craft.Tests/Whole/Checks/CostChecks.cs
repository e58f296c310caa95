using StudioBot.Craft.Costs;
using StudioBot.Craft.Units;

namespace StudioBot.Craft.Tests.Whole.Checks;

internal static class CostChecks
{
    public static readonly IReadOnlyDictionary<string, Func<Inputs, string>> All =
        new Dictionary<string, Func<Inputs, string>>
        {
            ["cost.per_100mL"] = given => Number(new ColourPrice(
                Sum(given, "price"),
                Mass.FromGrams(given.Number("pack_g")),
                Mass.FromGrams(given.Number("dose_tsp") * given.Number("g_per_tsp")),
                Volume.FromMillilitres(given.Number("per_mL"))).PerHundredMillilitres),
            ["cost.breakeven_dose_second"] = given => Answer.Of(
                Dosed(given, "1", given.Number("dose1")).BreakEven(Dosed(given, "2", given.Number("dose1"))),
                dose => dose.Grams),
            ["cost.price_markup"] = given =>
                Number(Quote.ByMarkup(Sum(given, "cost"), (decimal)given.Number("markup")).Price.Sum),
            ["cost.price_margin"] = given =>
                Number(Quote.ByMargin(Sum(given, "cost"), (decimal)given.Number("margin")).Price.Sum),
            ["cost.piece"] = given => Number(new PieceCost(
                Sum(given, "materials"),
                TimeSpan.FromHours(given.Number("hours")),
                Sum(given, "rate"),
                Sum(given, "overhead_per_hour")).Total.Sum),
        };

    // The row counts both doses in one unit, whatever it is; a gram stands for it.
    private static ColourPrice Dosed(Inputs given, string which, double dose) => new(
        Sum(given, "price" + which),
        Mass.FromGrams(given.Number($"pack{which}_g")),
        Mass.FromGrams(dose),
        Volume.FromMillilitres(20));

    private static Money Sum(Inputs given, string key) => Money.From((decimal)given.Number(key));

    private static string Number(decimal value) => Answer.Number((double)value);
}
