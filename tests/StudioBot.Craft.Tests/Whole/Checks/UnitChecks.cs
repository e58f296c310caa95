using StudioBot.Craft.Units;

namespace StudioBot.Craft.Tests.Whole.Checks;

internal static class UnitChecks
{
    public static readonly IReadOnlyDictionary<string, Func<Inputs, string>> All =
        new Dictionary<string, Func<Inputs, string>>
        {
            ["units.convert"] = given => Answer.Number((Named(given, "from"), Named(given, "to")) switch
            {
                (UnitName.OfLength from, UnitName.OfLength to) => given.Number("value") * from.One / to.One,
                (UnitName.OfVolume from, UnitName.OfVolume to) => given.Number("value") * from.One / to.One,
                (UnitName.OfMass from, UnitName.OfMass to) => given.Number("value") * from.One / to.One,
                (UnitName.OfMass from, UnitName.OfVolume to) =>
                    given.Number("value") * from.One / Density.FromGramsPerMillilitre(given.Number("density")) / to.One,
                var pair => throw new FormatException($"No way from {pair.Item1} to {pair.Item2}."),
            }),
        };

    private static UnitName Named(Inputs given, string key)
    {
        var unit = UnitNames.Find(given.Text(key).Replace('_', ' '));
        return unit == UnitNames.Scoop
            ? UnitNames.Scoop with { One = Volume.FromMillilitres(given.Number("scoop_mL")) }
            : unit ?? throw new FormatException($"No unit is called {given.Text(key)}.");
    }
}
