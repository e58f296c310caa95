using CsCheck;
using StudioBot.Craft.Flow;
using StudioBot.Craft.Units;

namespace StudioBot.Craft.Tests.Flow;

public sealed class TemperatureFactorTests
{
    [Theory]
    // per degree near 20 °C, from memory: water-borne paint 2 to 3 %, epoxy resin 7 to 10 %
    [InlineData(false, 0.02, 0.03)]
    [InlineData(true, 0.07, 0.10)]
    public void A_degree_warmer_is_so_much_thinner(bool resin, double least, double most)
    {
        var factor = resin ? TemperatureFactor.EpoxyResin : TemperatureFactor.WaterBornePaint;
        var read = DynamicViscosity.FromPascalSeconds(1);

        var warmer = factor.At(Temperature.FromCelsius(21), read, Temperature.FromCelsius(20));

        Assert.InRange(1 - warmer.PascalSeconds, least, most);
    }

    [Fact]
    public void Correcting_there_and_back_returns() =>
        Gen.Select(Gen.Double[5, 40], Gen.Double[5, 40], Gen.Double[1, 5000]).Sample((one, other, viscosity) =>
        {
            var (from, to) = (Temperature.FromCelsius(one), Temperature.FromCelsius(other));
            var read = KinematicViscosity.FromSquareMillimetresPerSecond(viscosity);
            var factor = TemperatureFactor.WaterBornePaint;
            var back = factor.At(from, factor.At(to, read, from), to);
            Assert.Equal(viscosity, back.SquareMillimetresPerSecond, viscosity * 1e-9);
        });

    [Fact]
    public void Two_readings_of_one_warmth_tell_no_factor() =>
        Assert.IsType<Finding<TemperatureFactor>.None>(TemperatureFactor.From(
            DynamicViscosity.FromPascalSeconds(1),
            Temperature.FromCelsius(20),
            DynamicViscosity.FromPascalSeconds(0.9),
            Temperature.FromCelsius(21.5)));
}
