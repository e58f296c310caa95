using StudioBot.Craft.Flow;
using StudioBot.Craft.Units;

namespace StudioBot.Craft.Tests.Whole.Checks;

internal static class CupChecks
{
    public static readonly IReadOnlyDictionary<string, Func<Inputs, string>> All =
        new Dictionary<string, Func<Inputs, string>>
        {
            ["flowcup.viscosity"] = given => Answer.Of(
                CupCurves.Viscosity(Cup(given), Seconds(given)), viscosity => viscosity.SquareMillimetresPerSecond),
            ["flowcup.seconds"] = given => Answer.Number(Cup(given).Drains(
                KinematicViscosity.FromSquareMillimetresPerSecond(given.Number("mm2_per_s"))).TotalSeconds),
            ["flowcup.dynamic"] = given => Answer.Of(
                CupCurves.Viscosity(Cup(given), Seconds(given)),
                viscosity => (viscosity * Density.FromGramsPerMillilitre(given.Number("density"))).MillipascalSeconds),
        };

    private static FlowCup Cup(Inputs given) =>
        CupCurves.Find(given.Text("cup")) ?? throw new FormatException($"No cup is called {given.Text("cup")}.");

    private static TimeSpan Seconds(Inputs given) => TimeSpan.FromSeconds(given.Number("seconds"));
}
