using StudioBot.Craft.Coats;
using StudioBot.Craft.Mixing;
using StudioBot.Craft.Surfaces;
using StudioBot.Craft.Units;

namespace StudioBot.Craft.Tests.Whole.Checks;

internal static class EpoxyChecks
{
    // Where a row names one density only, the other does not bear on its figure.
    private const double AnyDensity = 1.1;

    public static readonly IReadOnlyDictionary<string, Func<Inputs, string>> All =
        new Dictionary<string, Func<Inputs, string>>
        {
            ["epoxy.phr"] = given => Answer.Number(
                EpoxyChemistry.HardenerPer100(Weight(given.Number("ahew")), Weight(given.Number("eew")))),
            ["epoxy.eew_mix"] = given => Answer.Number(EpoxyChemistry.OfMixture(
                [.. given.Numbers("parts").Zip(given.Texts("eew"), (part, eew) => (
                    Mass.FromGrams(part),
                    eew == "inf" ? EquivalentWeight.Inert : Weight(Inputs.Parse(eew))))]).GramsPerEquivalent),
            ["epoxy.mass_ratio_B_per_100A"] = given =>
                Answer.Number(Kit(given, "volume_ratio", RatioBy.Volume).MassOfBPer100A),
            ["epoxy.volume_B_per_100A"] = given =>
                Answer.Number(Kit(given, "mass_ratio", RatioBy.Mass).VolumeOfBPer100A),
            ["epoxy.part_A_volume"] = given => Coat(given, amounts => amounts.OneCoat.PartA.Volume.Millilitres),
            ["epoxy.part_A_mass"] = given => Coat(given, amounts => amounts.OneCoat.PartA.Mass.Grams),
            ["epoxy.part_B_mass"] = given => Coat(given, amounts => amounts.OneCoat.PartB.Mass.Grams),
            ["epoxy.ea_for_doubling"] = given => Answer.Number(
                ActivationEnergy.ForDoubling(Celsius(given, "T_C"), given.Number("step")).KilojoulesPerMole),
            ["epoxy.potlife_rule"] = given => Answer.Of(
                Sheet(given).ByTenDegrees(Celsius(given, "T_C")), time => time.TotalMinutes),
            ["epoxy.potlife_arrhenius"] = given => Answer.Of(
                Sheet(given).In(
                    Celsius(given, "T_C"), ActivationEnergy.FromKilojoulesPerMole(given.Number("Ea_kJ"))),
                time => time.Likely.TotalMinutes),
            ["epoxy.cups"] = given => Answer.Number(Cups(given).Cups),
            ["epoxy.per_cup"] = given => Answer.Number(Cups(given).EachCup.Volume.Millilitres),
            ["epoxy.ratio_short_B_fraction"] = given => Answer.Number(RatioCheck.Of(
                new Resin(new MixRatio([100, given.Number("target_B_per_100A")], RatioBy.Mass), Any(), Any()),
                Mass.FromGrams(given.Number("A_g")),
                Mass.FromGrams(given.Number("B_g"))).Off),
            ["epoxy.level_height"] = given => Answer.Number(new Puddle(
                Density.FromKilogramsPerCubicMetre(given.Number("density_kg_m3")),
                given.Number("gamma_N_m"),
                given.Number("contact_deg")).LevelHeight.Millimetres),
        };

    private static string Coat(Inputs given, Func<CoatAmounts, double> figure) => Answer.Of(
        CoatAmounts.Of(
            new CoatWish(
                new SurfaceSet(given.Surface()),
                Length.FromMillimetres(given.Number("film_mm")),
                given.Number("runoff")),
            Kit(given, "ratio", RatioBy.Volume)),
        figure);

    private static Resin Kit(Inputs given, string ratio, RatioBy by) => new(
        given.Ratio(ratio, by),
        given.Has("density_A") ? Density.FromGramsPerMillilitre(given.Number("density_A")) : Any(),
        given.Has("density_B") ? Density.FromGramsPerMillilitre(given.Number("density_B")) : Any());

    private static CupPlan Cups(Inputs given) => CupPlan.Of(
        new Resin(new MixRatio([2, 1]), Any(), Any()),
        Volume.FromMillilitres(given.Number("total_mL")),
        Volume.FromMillilitres(given.Number("safe_cup_mL")));

    private static PotLife Sheet(Inputs given) =>
        new(TimeSpan.FromMinutes(given.Number("t_ref_min")), Celsius(given, "T_ref_C"));

    private static Density Any() => Density.FromGramsPerMillilitre(AnyDensity);

    private static EquivalentWeight Weight(double value) => EquivalentWeight.FromGramsPerEquivalent(value);

    private static Temperature Celsius(Inputs given, string key) => Temperature.FromCelsius(given.Number(key));
}
