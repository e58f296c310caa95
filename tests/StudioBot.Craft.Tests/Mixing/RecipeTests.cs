using StudioBot.Craft.Mixing;

namespace StudioBot.Craft.Tests.Mixing;

public sealed class RecipeTests
{
    [Fact]
    public void Liquids_beside_a_weighed_powder_have_no_one_basis()
    {
        Assert.Equal(RatioBy.Volume, new Recipe("medium", [new Part("base", 3), new Part("varnish", 1)]).By);
        Assert.Null(new Recipe("gold", [new Part("medium", 20), new Part("gold mica", 2, RatioBy.Mass)]).By);
    }

    [Fact]
    public void A_recipe_of_one_basis_is_a_ratio()
    {
        Assert.Equal(
            new MixRatio([3, 1]), new Recipe("medium", [new Part("base", 3), new Part("varnish", 1)]).Ratio);
        Assert.Null(new Recipe("plain", [new Part("white", 1)]).Ratio);
        Assert.Null(new Recipe("gold", [new Part("medium", 20), new Part("gold mica", 2, RatioBy.Mass)]).Ratio);
    }

    [Fact]
    public void A_material_stands_once() =>
        Assert.Throws<ArgumentException>(() => new Recipe("odd", [new Part("White", 3), new Part("white", 1)]));

    [Theory]
    [InlineData(0)]
    [InlineData(-1)]
    [InlineData(double.NaN)]
    public void A_part_is_more_than_nothing(double amount) =>
        Assert.Throws<ArgumentException>(() => new Recipe("odd", [new Part("white", amount)]));
}
