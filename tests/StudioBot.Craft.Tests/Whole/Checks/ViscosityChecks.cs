using StudioBot.Craft.Flow;
using StudioBot.Craft.Units;

namespace StudioBot.Craft.Tests.Whole.Checks;

internal static class ViscosityChecks
{
    public static readonly IReadOnlyDictionary<string, Func<Inputs, string>> All =
        new Dictionary<string, Func<Inputs, string>>
        {
            ["viscosity.refutas_vbn"] = given => Answer.Of(
                Blend.BlendingNumber(KinematicViscosity.FromSquareMillimetresPerSecond(given.Number("mm2_per_s"))),
                number => number),
            ["viscosity.blend_refutas"] = given => Answer.Of(
                Blend.Refutas(
                [
                    .. given.Numbers("mm2_per_s").Zip(given.Numbers("mass_frac"), (viscosity, share) => (
                        KinematicViscosity.FromSquareMillimetresPerSecond(viscosity), Mass.FromGrams(share))),
                ]),
                viscosity => viscosity.SquareMillimetresPerSecond),
            ["viscosity.blend_arrhenius"] = given => Answer.Number(Blend.LogLinear(
            [
                .. given.Numbers("viscosity").Zip(given.Numbers("frac"), (viscosity, share) => (
                    DynamicViscosity.FromMillipascalSeconds(viscosity), Volume.FromMillilitres(share))),
            ]).MillipascalSeconds),
            ["viscosity.add_to_target"] = given => Answer.Of(Thinning.Next(Readings(given)), step => More(
                step, NextLiquid.SameAgain, step.More)),
            ["viscosity.add_to_target_alt"] = given => Answer.Of(Thinning.Next(Readings(given)), step => More(
                step, NextLiquid.SameAgain, step.Low)),
            ["viscosity.add_base_back"] = given => Answer.Of(Thinning.Next(Readings(given)), step => More(
                step, NextLiquid.FirstBack, step.More)),
            ["viscosity.add_to_target_cup"] = given => Answer.Of(Thinning.Next(CupRun(given)), step => More(
                step, NextLiquid.SameAgain, step.More)),
            ["viscosity.temperature_B"] = given => Answer.Of(
                TemperatureFactor.From(
                    Viscosity(given, "eta1"), Celsius(given, "T1_C"), Viscosity(given, "eta2"), Celsius(given, "T2_C")),
                factor => factor.Kelvins),
            ["viscosity.temperature"] = given => Answer.Number(new TemperatureFactor(given.Number("B_K"))
                .At(Celsius(given, "T_C"), Viscosity(given, "eta_ref"), Celsius(given, "T_ref_C"))
                .MillipascalSeconds),
        };

    private static double More(ThinningStep step, NextLiquid expected, Volume amount) => step.What == expected
        ? amount.Millilitres
        : throw new InvalidOperationException($"{step.What} where {expected} is due.");

    private static ThinningRun Readings(Inputs given) => new(
        Millilitres(given, "have_mL"),
        Trace(given, "reading"),
        Millilitres(given, "added_mL"),
        Trace(given, "reading_after"),
        Trace(given, "target"));

    private static ThinningRun CupRun(Inputs given) => new(
        Millilitres(given, "have_mL"),
        Cup(given, "seconds"),
        Millilitres(given, "added_mL"),
        Cup(given, "seconds_after"),
        Cup(given, "target_s"));

    private static FlowReading.OfTrace Trace(Inputs given, string key) =>
        new(new Trace(TimeSpan.FromSeconds(given.Number(key))));

    private static FlowReading.OfCup Cup(Inputs given, string key) =>
        new(CupCurves.Find(given.Text("cup"))!, TimeSpan.FromSeconds(given.Number(key)));

    private static Volume Millilitres(Inputs given, string key) => Volume.FromMillilitres(given.Number(key));

    private static Temperature Celsius(Inputs given, string key) => Temperature.FromCelsius(given.Number(key));

    private static DynamicViscosity Viscosity(Inputs given, string key) =>
        DynamicViscosity.FromMillipascalSeconds(given.Number(key));
}
