using StudioBot.Craft.Drying;
using StudioBot.Craft.Units;

namespace StudioBot.Craft.Tests.Whole.Checks;

internal static class DryingChecks
{
    // Rows without a deviation are built from exact masses: a thousandth of a gram is their last digit.
    private const double ExactScale = 0.001;

    public static readonly IReadOnlyDictionary<string, Func<Inputs, string>> All =
        new Dictionary<string, Func<Inputs, string>>
        {
            ["drying.nv_mix"] = given => Answer.Number(WaterContent.NonVolatile(Parts(given))),
            ["drying.water_mass"] = given => Answer.Number(WaterContent.Of(Parts(given)).Grams),
            ["drying.equivalent_hours"] = EquivalentHours,
            ["drying.time_scaled"] = given => Answer.Of(
                new ScaledTime(Hours(given.Number("t_ref_h")), Film(given, "film_ref_mm"), given.Number("n"))
                    .In(Rooms.Read(given.Text("room")), Film(given, "film_mm")),
                time => time.TotalHours),
            ["drying.m_inf_three"] = given => Answer.Of(Fit(given), curve => curve.DryMass.Grams),
            ["drying.tau_three"] = given => Answer.Of(Fit(given), curve => curve.Tau.TotalHours),
            ["drying.tau_two"] = given => Answer.Of(Fit(given), curve => curve.Tau.TotalHours),
            ["drying.curvature_test"] = given => Answer.Of(Fit(given), curve => curve.Tau.TotalHours),
            ["drying.fit_tau"] = given => Answer.Of(Fit(given), curve => curve.Tau.TotalHours),
            ["drying.fit_m_inf"] = given => Answer.Of(Fit(given), curve => curve.DryMass.Grams),
            ["drying.fit_tau_low95"] = given => Answer.Of(Fit(given), curve => curve.TauFrom.TotalHours),
            ["drying.fit_tau_high95"] = given => Answer.Of(Fit(given), curve => curve.TauTo.TotalHours),
            ["drying.time_to_residual"] = given => Answer.Number(ReadyLine.TimeTo(
                Mass.FromGrams(given.Number("residual_g")),
                Mass.FromGrams(given.Number("dm_g")),
                Hours(given.Number("tau_h"))).TotalHours),
            ["drying.residual_line"] = given =>
                Answer.Number(ReadyLine.Of(Mass.FromGrams(given.Number("water_g"))).Grams),
            ["drying.two_stage_hours"] = given => Answer.Of(
                new TwoStage(
                    given.Number("vol_solids"), given.Number("k"), given.Number("Deff"), given.Number("packing"))
                    .In(given.Air(), Film(given, "wet_mm")),
                time => time.TotalHours),
        };

    private static string EquivalentHours(Inputs given)
    {
        var at = DateTimeOffset.UnixEpoch;
        List<RoomReading> readings = [];
        foreach (var stretch in given.Texts("room"))
        {
            var parts = stretch.Split("h@");
            readings.Add(new RoomReading(at, Rooms.Read(parts[1])));
            at += Hours(Inputs.Parse(parts[0]));
        }

        return Answer.Number(
            new RoomClock(readings).Elapsed(DateTimeOffset.UnixEpoch, at).Equivalent.TotalHours);
    }

    private static Finding<DryingCurve> Fit(Inputs given)
    {
        var water = Mass.FromGrams(given.Has("water_g") ? given.Number("water_g") : 0);
        var dry = given.Has("m_inf_g") ? DryMass.Of(Mass.FromGrams(given.Number("m_inf_g")), water) : null;
        var deviation = given.Has("sigma_g") ? given.Number("sigma_g") : ExactScale;
        return DryingFit.Of(
            [.. given.Numbers("t_h").Zip(given.Numbers("m_g"), (t, m) => new Weighing(Hours(t), Mass.FromGrams(m)))],
            Mass.FromGrams(deviation), dry, water);
    }

    private static IReadOnlyList<WetPart> Parts(Inputs given) =>
        [.. given.Numbers("masses_g").Zip(given.Numbers("nv"), (m, nv) => new WetPart(Mass.FromGrams(m), nv))];

    private static TimeSpan Hours(double hours) => TimeSpan.FromHours(hours);

    private static Length Film(Inputs given, string key) => Length.FromMillimetres(given.Number(key));
}
