using StudioBot.Chat.House;
using StudioBot.Chat.Tests.Support;
using StudioBot.Craft.Units;
using StudioBot.Records.Materials;
using StudioBot.Records.Recipes;

namespace StudioBot.Chat.Tests.House;

public sealed class RecipeSketchTests
{
    [Fact]
    public void A_recipe_comes_with_its_picture_and_the_list_of_them_does_not()
    {
        var file = Sample.Answer("recipe ocean")!.File!;
        Assert.Equal(("recipe.png", true), (file.Name, file.IsPicture));
        Assert.InRange(file.Content.Length, 1000, 200_000);
        Assert.Null(Sample.Answer("recipe")!.File);
    }

    [Fact]
    public void Shares_are_of_what_is_poured_and_powder_goes_on_top()
    {
        var parts = RecipeSketch.Figures(Of(Millilitres(300), Millilitres(100), Grams(3)), "Ocean").Parts;
        Assert.Equal([0.75, 0.25, null], parts.Select(part => part.Share));
        Assert.Equal(["300 ml", "100 ml", "3 g"], parts.Select(part => part.Amount));
    }

    [Fact]
    public void Powders_alone_are_shares_by_mass()
    {
        var figures = RecipeSketch.Figures(Of(Grams(3), Grams(1)), "Dust");
        Assert.Equal([0.75, 0.25], figures.Parts.Select(part => part.Share ?? 0));
        Assert.Equal("Shares by mass.", figures.Line);
    }

    private static Recipe Of(params Amount[] amounts) => new(
        1, "ocean", null, [.. amounts.Select((amount, at) => new Part(at, $"part {at}", amount))]);

    private static Amount.ByVolume Millilitres(double ml) => new(Volume.FromMillilitres(ml));

    private static Amount.ByMass Grams(double grams) => new(Mass.FromGrams(grams));
}
