using StudioBot.Craft.Costs;

namespace StudioBot.Craft.Tests.Whole.Checks;

internal static class LedgerChecks
{
    public static readonly IReadOnlyDictionary<string, Func<Inputs, string>> All =
        new Dictionary<string, Func<Inputs, string>>
        {
            ["ledger.split"] = given => Answer.List(
                new Money((long)given.Number(given.Has("total_cents") ? "total_cents" : "total"))
                    .Split([.. given.Numbers("weights").Select(weight => (decimal)weight)])
                    .Select(share => (double)share.Cents)),
        };
}
