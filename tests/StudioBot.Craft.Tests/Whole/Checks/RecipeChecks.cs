using StudioBot.Craft.Mixing;
using StudioBot.Craft.Units;

namespace StudioBot.Craft.Tests.Whole.Checks;

internal static class RecipeChecks
{
    public static readonly IReadOnlyDictionary<string, Func<Inputs, string>> All =
        new Dictionary<string, Func<Inputs, string>>
        {
            ["recipe.parts"] = PartOrWhole,
            ["recipe.add_to_ratio"] = given => Answer.Of(
                TopUp.Complete(given.Ratio("ratio"), Volumes(given, "have")),
                completion => completion.Add[(int)given.Number("component") - 1].Millilitres),
            ["recipe.total_after"] = given => Answer.Of(
                TopUp.Complete(given.Ratio("ratio"), Volumes(given, "have")),
                completion => completion.Total.Millilitres),
            ["recipe.alligation_parts"] = given =>
                Alligation.Stocks(
                    given.Number("strong_pct"), given.Number("weak_pct"), given.Number("target_pct"))
                is Finding<MixRatio>.Found found ? Answer.List(found.Value.Parts) : "none",
            ["recipe.alligation_add"] = given => Answer.Of(
                Alligation.Add(
                    Millilitres(given, "have_mL"),
                    given.Number("have_frac"),
                    given.Number("adding_frac"),
                    given.Number("target_frac")),
                volume => volume.Millilitres),
            ["recipe.mix_density"] = given => Answer.Number(MixDensity.Of(
                [.. given.Numbers("masses_g").Zip(given.Numbers("densities"), Weighed)]).GramsPerMillilitre),
            ["recipe.pigment_mass"] = given => Answer.Number(Pigment.For(
                Density.FromGramsPerMillilitre(given.Number("loading_g_per_mL")),
                Millilitres(given, "volume_mL")).Grams),
            ["recipe.pvc"] = given => Answer.Of(
                Pigment.VolumeConcentration(
                    Weighed(given.Number("pigment_g"), given.Number("pigment_density")),
                    Weighed(given.Number("medium_g"), given.Number("polymer_density")),
                    given.Number("medium_nv_mass")),
                share => share),
            ["recipe.round_ratio_error"] = given => Answer.Number(
                ToolRounding.WorstError(new MixRatio(given.Numbers("exact")), Volumes(given, "rounded"))),
            ["recipe.best_rounding_up"] = given => Answer.List(ToolRounding
                .Of(given.Ratio("ratio"), Millilitres(given, "total_mL_at_least"), Millilitres(given, "step_mL"))
                .Parts.Select(part => part.Millilitres)),
            ["recipe.scale_reading_error"] = given => Answer.Number(ToolRounding.ScaleReadingError(
                Mass.FromGrams(given.Number("mass_g")), Mass.FromGrams(given.Number("resolution_g")))),
            ["recipe.thicken_fraction"] = given =>
                Answer.Number(Millilitres(given, "added_mL") / Millilitres(given, "medium_mL")),
        };

    private static string PartOrWhole(Inputs given)
    {
        var ratio = given.Ratio("ratio");
        return Answer.Number(given.Has("component")
            ? Parts.Of(ratio, Millilitres(given, "total_mL"))[(int)given.Number("component") - 1].Millilitres
            : Parts.WholeFrom(
                ratio, 0, given.Number("scoops_of_first") * Millilitres(given, "scoop_mL")).Millilitres);
    }

    private static Volume Millilitres(Inputs given, string key) => Volume.FromMillilitres(given.Number(key));

    private static Volume[] Volumes(Inputs given, string key) =>
        [.. given.Numbers(key).Select(Volume.FromMillilitres)];

    private static WeighedPart Weighed(double grams, double density) =>
        new(Mass.FromGrams(grams), Density.FromGramsPerMillilitre(density));
}
