using StudioBot.Craft.Settling;
using StudioBot.Craft.Units;

namespace StudioBot.Craft.Tests.Whole.Checks;

internal static class SettlingChecks
{
    public static readonly IReadOnlyDictionary<string, Func<Inputs, string>> All =
        new Dictionary<string, Func<Inputs, string>>
        {
            ["settle.velocity"] = Velocity,
            ["settle.restir_hours"] = given => Answer.Of(
                Grains(given).StirAfter(
                    Length.FromMillimetres(given.Number("depth_mm")), given.Number("allowed_fraction")),
                time => time.TotalHours),
        };

    // Mica is stated by the hour, the far finer titanium white by the day.
    private static string Velocity(Inputs given)
    {
        var grains = Grains(given);
        var time = grains.Grain < Length.FromMicrometres(1) ? TimeSpan.FromDays(1) : TimeSpan.FromHours(1);
        return Answer.Of(grains.After(time), way => way.Millimetres);
    }

    private static Sinking Grains(Inputs given) => new(
        Length.FromMicrometres(given.Number("d_um")),
        Density.FromKilogramsPerCubicMetre(given.Number("particle")),
        Density.FromKilogramsPerCubicMetre(given.Number("fluid")),
        DynamicViscosity.FromPascalSeconds(given.Number("eta_Pa_s")));
}
