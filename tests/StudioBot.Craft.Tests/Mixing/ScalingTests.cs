using CsCheck;
using StudioBot.Craft.Mixing;
using StudioBot.Craft.Surfaces;
using StudioBot.Craft.Tests.Pours;
using StudioBot.Craft.Units;

namespace StudioBot.Craft.Tests.Mixing;

public sealed class ScalingTests
{
    private static readonly Recipe Ocean = new(
        "ocean", [new Part("medium", 20), new Part("varnish", 5), new Part("blue mica", 2.8, RatioBy.Mass)]);

    [Fact]
    public void A_recipe_of_liquids_needs_no_density()
    {
        var recipe = new Recipe("medium", [new Part("base", 3), new Part("varnish", 1)]);

        var parts = Found(Scaling.To(recipe, Volume.FromMillilitres(400), _ => null));

        Assert.Equal([300, 100], parts.Select(part => part.Volume!.Value.Millilitres));
        Assert.All(parts, part => Assert.Null(part.Mass));
    }

    [Fact]
    public void A_powder_takes_its_own_volume()
    {
        // 20 mL + 5 mL + 2.8 g of 2.8 g/mL (1 mL) are 26 mL; ten times as much is 260 mL
        var parts = Found(Scaling.To(Ocean, Volume.FromMillilitres(260), DensityOf));

        Assert.Equal(200, parts[0].Volume!.Value.Millilitres, 1e-9);
        Assert.Equal(28, parts[2].Mass!.Value.Grams, 1e-9);
        Assert.Equal(10, parts[2].Volume!.Value.Millilitres, 1e-9);
    }

    [Fact]
    public void An_unknown_powder_is_named()
    {
        var none = Assert.IsType<Finding<IReadOnlyList<ScaledPart>>.None>(
            Scaling.To(Ocean, Volume.FromMillilitres(260), _ => null));

        Assert.Contains("blue mica", none.Why, StringComparison.Ordinal);
    }

    [Fact]
    public void Scaling_up_and_down_again_returns() =>
        Gen.Select(Gen.Double[1, 1000], Gen.Double[1, 1000]).Sample((first, second) =>
        {
            var small = Found(Scaling.To(Ocean, Volume.FromMillilitres(first), DensityOf));
            var large = Found(Scaling.To(AsRecipe(small), Volume.FromMillilitres(second), DensityOf));
            var back = Found(Scaling.To(AsRecipe(large), Volume.FromMillilitres(first), DensityOf));
            Assert.All(small.Zip(back), pair => Assert.Equal(
                pair.First.Volume!.Value.Millilitres, pair.Second.Volume!.Value.Millilitres, first * 1e-9));
        });

    [Fact]
    public void By_mass_all_parts_weigh_the_total_together()
    {
        var parts = Found(Scaling.To(Ocean, Mass.FromGrams(500), DensityOf));

        Assert.Equal(500, parts.Sum(part => part.Mass!.Value.Grams), 1e-9);
    }

    [Fact]
    public void For_a_surface_it_is_what_the_technique_needs_and_one_cup_keeps()
    {
        // 30 cm square, 2.5 mm and a fifth over: 270 mL (V = A·film·(1 + run-off)), and 3 mL for the cup
        var thirty = Length.FromCentimetres(30);
        var parts = Found(Scaling.To(
            Ocean, Techniques.Bloom, new SurfaceSet(new Surface.Panel(thirty, thirty)), DensityOf));

        Assert.Equal(273, parts.Sum(part => part.Volume!.Value.Millilitres), 1e-9);
    }

    private static Recipe AsRecipe(IReadOnlyList<ScaledPart> parts) => new(
        "scaled", [.. parts.Select(part => new Part(part.Material, part.Volume!.Value.Millilitres))]);

    private static Density? DensityOf(string material) =>
        Density.FromGramsPerMillilitre(material == "blue mica" ? 2.8 : 1.04);

    private static IReadOnlyList<ScaledPart> Found(Finding<IReadOnlyList<ScaledPart>> finding) =>
        Assert.IsType<Finding<IReadOnlyList<ScaledPart>>.Found>(finding).Value;
}
