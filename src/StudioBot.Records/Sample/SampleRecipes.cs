using StudioBot.Craft.Units;
using StudioBot.Records.Materials;
using StudioBot.Records.Recipes;

namespace StudioBot.Records.Sample;

/// <summary>The mixtures the invented studio has saved.</summary>
internal static class SampleRecipes
{
    public static Dictionary<string, Recipe> WriteInto(
        StudioSession session,
        IReadOnlyDictionary<string, Material> materials)
    {
        Part Ml(string name, double millilitres) =>
            Part.Of(materials[name], new Amount.ByVolume(Volume.FromMillilitres(millilitres)));

        Part Grams(string name, double grams) =>
            Part.Of(materials[name], new Amount.ByMass(Mass.FromGrams(grams)));

        Recipe[] recipes =
        [
            session.Recipes.Add(
                "medium", [Ml("neutral base", 300), Ml("gloss varnish", 100)], materials["medium"]),
            session.Recipes.Add(
                "activator", [Ml("white", 40), Ml("flow extender", 10)], materials["activator"]),
            session.Recipes.Add(
                "ocean",
                [
                    Ml("medium", 140), Ml("white", 25), Ml("ultramarine", 30), Ml("lamp black", 5),
                    Grams("blue mica", 5), Grams("silver mica", 2),
                ]),
            session.Recipes.Add(
                "dusk",
                [
                    Ml("medium", 135), Ml("magenta", 35), Ml("ochre", 20), Ml("lamp black", 10),
                    Grams("gold mica", 4), Grams("copper mica", 3),
                ]),
        ];
        return recipes.ToDictionary(recipe => recipe.Name);
    }
}
