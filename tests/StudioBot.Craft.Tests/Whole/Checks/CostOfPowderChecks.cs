using System.Globalization;
using StudioBot.Craft.Costs;
using StudioBot.Craft.Units;

namespace StudioBot.Craft.Tests.Whole.Checks;

internal static class CostOfPowderChecks
{
    public static readonly IReadOnlyDictionary<string, Func<Inputs, string>> All =
        new Dictionary<string, Func<Inputs, string>>
        {
            ["cost.per_g"] = given => Answer.Number(
                (double)Money.From(decimal.Parse(given.Text("price"), CultureInfo.InvariantCulture)).Sum
                / Mass.FromGrams(given.Number("pack_g")).Grams),
        };
}
