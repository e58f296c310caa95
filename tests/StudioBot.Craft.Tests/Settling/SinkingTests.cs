using CsCheck;
using StudioBot.Craft.Settling;
using StudioBot.Craft.Units;

namespace StudioBot.Craft.Tests.Settling;

public sealed class SinkingTests
{
    private static readonly Length Cup = Length.FromMillimetres(60);

    [Fact]
    public void By_the_time_to_stir_the_grains_sank_the_share_allowed() =>
        Gen.Select(Gen.Double[1, 60], Gen.Double[0.3, 10], Gen.Double[0.01, 0.5]).Sample((size, viscosity, allowed) =>
        {
            var grains = Grains(size, 2.8, viscosity);
            var time = Assert.IsType<Finding<TimeSpan>.Found>(grains.StirAfter(Cup, allowed)).Value;
            var sunk = Assert.IsType<Finding<Length>.Found>(grains.After(time)).Value;
            Assert.Equal(allowed * 60, sunk.Millimetres, 1e-5);
        });

    [Fact]
    public void A_crowd_of_grains_sinks_slower()
    {
        // (1 − 0.1)^4.65 = 0.613, hindered settling from memory
        var alone = Sunk(Grains(20, 2.8, 1));
        var crowd = Sunk(Grains(20, 2.8, 1) with { Solids = 0.10 });

        Assert.Equal(0.613, crowd / alone, 0.001);
    }

    [Fact]
    public void What_is_lighter_than_the_liquid_floats() =>
        Assert.Equal(
            NoFigure.WrongDirection, Assert.IsType<Finding<TimeSpan>.None>(Grains(20, 0.9, 1).StirAfter(Cup)).Kind);

    [Fact]
    public void Coarse_sand_in_water_falls_too_fast_for_the_formula() =>
        Assert.Equal(
            NoFigure.OutOfRange,
            Assert.IsType<Finding<Length>.None>(Grains(500, 2.65, 0.001).After(TimeSpan.FromSeconds(1))).Kind);

    [Fact]
    public void The_finest_powder_waits_ten_years_at_most() =>
        Assert.Equal(
            TimeSpan.FromDays(3650),
            Assert.IsType<Finding<TimeSpan>.Found>(Grains(0.001, 2.8, 1).StirAfter(Cup)).Value);

    private static Length Sunk(Sinking grains) =>
        Assert.IsType<Finding<Length>.Found>(grains.After(TimeSpan.FromHours(1))).Value;

    private static Sinking Grains(double micrometres, double density, double viscosity) => new(
        Length.FromMicrometres(micrometres),
        Density.FromGramsPerMillilitre(density),
        Density.FromGramsPerMillilitre(1.05),
        DynamicViscosity.FromPascalSeconds(viscosity));
}
