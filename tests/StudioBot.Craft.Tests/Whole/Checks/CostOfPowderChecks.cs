using System.Globalization;
using StudioBot.Craft.Costs;
using StudioBot.Craft.Units;

namespace StudioBot.Craft.Tests.Whole.Checks;

internal static class CostOfPowderChecks
{
    public static readonly IReadOnlyDictionary<string, Func<Inputs, string>> All =
        new Dictionary<string, Func<Inputs, string>>
        {
            // A gram of it in 100 mL: then the price of 100 mL is that of the gram.
            ["cost.per_g"] = given => Answer.Number((double)new ColourPrice(
                Money.From(decimal.Parse(given.Text("price"), CultureInfo.InvariantCulture)),
                Mass.FromGrams(given.Number("pack_g")),
                Mass.FromGrams(1),
                Volume.FromMillilitres(100)).PerHundredMillilitres),
        };
}
