using StudioBot.Craft.Air;
using StudioBot.Craft.Units;

namespace StudioBot.Craft.Tests.Whole.Checks;

internal static class AirChecks
{
    public static readonly IReadOnlyDictionary<string, Func<Inputs, string>> All =
        new Dictionary<string, Func<Inputs, string>>
        {
            ["air.es"] = given => Answer.Number(VapourPressure.Saturated(Celsius(given, "T_C")).Kilopascals),
            ["air.vpd"] = given => Answer.Number(given.Air().Deficit.Kilopascals),
            ["air.dewpoint"] = given => Answer.Number(DewPoint.Of(given.Air()).Celsius),
            ["air.resin_margin"] = given => Answer.Number(Judge(given).Now!.Degrees),
            ["air.resin_margin_overnight"] = given => Answer.Number(Judge(given).AtNight!.Degrees),
            ["air.resin_ok"] = given => Word(Judge(given).Answer),
            ["air.resin_ok_overnight"] = given => Word(Judge(given).Answer),
            ["air.mean_es_two_readings"] = given => Answer.Number(VapourPressure.Mean(
                [VapourPressure.Saturated(Celsius(given, "T1_C")), VapourPressure.Saturated(Celsius(given, "T2_C"))])
                .Kilopascals),
            ["air.mean_ea_two_readings"] = given => Answer.Number(VapourPressure.Mean(
                [
                    Rooms.Of(given.Number("T1_C"), given.Number("RH1")).Vapour,
                    Rooms.Of(given.Number("T2_C"), given.Number("RH2")).Vapour,
                ]).Kilopascals),
        };

    private static ResinAir Judge(Inputs given) => ResinAir.Judge(
        given.Air(),
        given.Has("surface_C") ? Celsius(given, "surface_C") : null,
        given.Has("T_night_C") ? Celsius(given, "T_night_C") : null);

    private static string Word(ResinAnswer answer) => answer switch
    {
        ResinAnswer.Yes => "yes",
        ResinAnswer.YesWithCaution => "caution",
        _ => "no",
    };

    private static Temperature Celsius(Inputs given, string key) => Temperature.FromCelsius(given.Number(key));
}
