using StudioBot.Craft.Pours;
using StudioBot.Craft.Units;

namespace StudioBot.Craft.Tests.Whole.Checks;

internal static class SpinChecks
{
    public static readonly IReadOnlyDictionary<string, Func<Inputs, string>> All =
        new Dictionary<string, Func<Inputs, string>>
        {
            ["spin.thickness"] = Thickness,
            ["spin.time_to_thickness"] = given => Answer.Of(
                Spinning(given).TimeTo(Film(given, "h0_mm"), Film(given, "h_mm")), time => time.TotalSeconds),
            ["spin.thin_limit"] = given => Answer.Number(Spinning(given).ThinLimit(Time(given)).Millimetres),
            ["spin.thrown_off_fraction"] = given =>
                Answer.Number(Spin.ThrownOff(Film(given, "h0_mm"), Film(given, "h_mm"))),
            ["spin.rim_acceleration_g"] = given => Answer.Of(
                new Spin(Density.FromGramsPerMillilitre(1), Speed(given), Spin.UsualViscosity)
                    .RimPull(Length.FromCentimetres(given.Number("radius_cm"))),
                pull => pull),
        };

    // The resin row of the public script is stated in micrometres, the pours in millimetres.
    private static string Thickness(Inputs given)
    {
        var film = Spinning(given).FilmAfter(Film(given, "h0_mm"), Time(given));
        return Answer.Number(film < Length.FromMillimetres(0.1) ? film.Micrometres : film.Millimetres);
    }

    private static Spin Spinning(Inputs given) => new(
        Density.FromKilogramsPerCubicMetre(given.Number("density_kg_m3")),
        Speed(given),
        DynamicViscosity.FromPascalSeconds(given.Number("eta_Pa_s")));

    private static RotationalSpeed Speed(Inputs given) =>
        RotationalSpeed.FromRevolutionsPerMinute(given.Number("rpm"));

    private static TimeSpan Time(Inputs given) => TimeSpan.FromSeconds(given.Number("seconds"));

    private static Length Film(Inputs given, string key) => Length.FromMillimetres(given.Number(key));
}
