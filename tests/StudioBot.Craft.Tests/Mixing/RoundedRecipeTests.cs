using StudioBot.Craft.Mixing;
using StudioBot.Craft.Units;

namespace StudioBot.Craft.Tests.Mixing;

public sealed class RoundedRecipeTests
{
    private static readonly Volume Spoon = Volume.FromMillilitres(5);
    private static readonly Volume Syringe = Volume.FromMillilitres(1);
    private static readonly Mass Division = Mass.FromGrams(0.1);

    private static readonly Recipe Recipe = new(
        "tide", [new("medium", 30), new("white", 10), new("mica", 2, RatioBy.Mass)]);

    [Fact]
    public void A_powder_grows_with_the_liquids_it_colours()
    {
        // 187.5 + 62.5 in 5 mL steps is 195 + 65 (3:1 kept); 12.5 g of powder grow by the same 1.04 to 13.0 g.
        var rounded = RoundedRecipe.Of(Recipe, Scaled(187.5, 62.5, 12.5), Spoon, Syringe, Division);

        Assert.Equal(195, rounded.Parts[0].Volume!.Value.Millilitres, 1e-9);
        Assert.Equal(65, rounded.Parts[1].Volume!.Value.Millilitres, 1e-9);
        Assert.Equal(13, rounded.Parts[2].Mass!.Value.Grams, 1e-9);
        Assert.Equal(1.04, rounded.Growth, 1e-9);
        Assert.Equal(0, rounded.WorstError, 1e-9);
    }

    [Fact]
    public void Where_a_spoon_would_bend_the_recipe_a_syringe_is_taken()
    {
        // 21 + 7 mL: spoons make 25 + 5 or 20 + 10; millilitres keep it.
        var rounded = RoundedRecipe.Of(Recipe, Scaled(21, 7, 1.4), Spoon, Syringe, Division);

        Assert.Equal(Syringe, rounded.Step);
        Assert.Equal(0, rounded.WorstError, 1e-9);
    }

    [Fact]
    public void A_spoon_that_needs_a_tenth_more_gives_way_too()
    {
        // 28:5:6:1 at 360 mL: 252 + 45 + 54 + 9 mL keep it; in 5 mL steps it takes 395. Proportion.
        var recipe = new Recipe("ocean", [new("medium", 28), new("white", 5), new("blue", 6), new("black", 1)]);
        ScaledPart[] scaled = [.. recipe.Parts.Select(part => new ScaledPart(part.Material, Volume.FromMillilitres(part.Amount * 8.99), null))];

        Assert.Equal(360.0 / (40 * 8.99), RoundedRecipe.Of(recipe, scaled, Spoon, Syringe, Division).Growth, 1e-9);
    }

    [Fact]
    public void A_pinch_of_powder_is_where_the_scale_errs()
    {
        // 0.14 g on a scale of 0.1 g is 0.1 g: 1/0.714 − 1 = 40 % against parts that are kept.
        var rounded = RoundedRecipe.Of(Recipe, Scaled(21, 7, 0.14), Spoon, Syringe, Division);

        Assert.Equal(0.4, rounded.WorstError, 1e-9);
    }

    [Fact]
    public void Every_part_has_its_size() =>
        Assert.Throws<ArgumentException>(() => RoundedRecipe.Of(Recipe, [], Spoon, Syringe, Division));

    private static ScaledPart[] Scaled(double medium, double white, double mica) =>
    [
        new("medium", Volume.FromMillilitres(medium), null),
        new("white", Volume.FromMillilitres(white), null),
        new("mica", null, Mass.FromGrams(mica)),
    ];
}
