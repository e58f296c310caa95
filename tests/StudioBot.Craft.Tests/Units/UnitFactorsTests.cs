using Ours = StudioBot.Craft.Units;
using Theirs = UnitsNet;

namespace StudioBot.Craft.Tests.Units;

/// <summary>Our factors against UnitsNet, a library of units that only the tests know.</summary>
public sealed class UnitFactorsTests
{
    private const double Relative = 1e-9;

    [Theory]
    [InlineData("mm", 0.001)]
    [InlineData("cm", 0.01)]
    [InlineData("m", 1)]
    [InlineData("in", 0.0254)]
    [InlineData("ft", 0.3048)]
    public void Lengths_agree(string word, double metres)
    {
        var ours = Assert.IsType<Ours.UnitName.OfLength>(Ours.UnitNames.Find(word)).One;
        var theirs = word switch
        {
            "in" => Theirs.Length.FromInches(1),
            "ft" => Theirs.Length.FromFeet(1),
            _ => Theirs.Length.FromMeters(metres),
        };

        Close(theirs.Meters, ours.Metres);
    }

    [Fact]
    public void Volumes_agree()
    {
        Close(Theirs.Volume.FromUsOunces(1).Milliliters, Full("fl oz", Ours.UnitOrigin.Us));
        Close(Theirs.Volume.FromImperialOunces(1).Milliliters, Full("fl oz", Ours.UnitOrigin.Imperial));
        Close(Theirs.Volume.FromUsPints(1).Milliliters, Full("pint", Ours.UnitOrigin.Us));
        Close(Theirs.Volume.FromImperialPints(1).Milliliters, Full("pint", Ours.UnitOrigin.Imperial));
        Close(Theirs.Volume.FromUsQuarts(1).Milliliters, Full("quart", Ours.UnitOrigin.Us));
        Close(Theirs.Volume.FromUsGallons(1).Milliliters, Full("gallon", Ours.UnitOrigin.Us));
        Close(Theirs.Volume.FromImperialGallons(1).Milliliters, Full("gallon", Ours.UnitOrigin.Imperial));
        Close(Theirs.Volume.FromUsTeaspoons(1).Milliliters, Full("tsp", Ours.UnitOrigin.Us));
        Close(Theirs.Volume.FromUsTablespoons(1).Milliliters, Full("tbsp", Ours.UnitOrigin.Us));
        Close(Theirs.Volume.FromMetricTeaspoons(1).Milliliters, Full("tsp", Ours.UnitOrigin.Metric));
    }

    [Fact]
    public void Masses_agree()
    {
        Close(Theirs.Mass.FromOunces(1).Grams, Ours.Mass.FromOunces(1).Grams);
        Close(Theirs.Mass.FromPounds(1).Grams, Ours.Mass.FromPounds(1).Grams);
        Close(Theirs.Mass.FromPounds(1).Pounds, Ours.Mass.FromPounds(1).Pounds);
    }

    [Fact]
    public void Temperatures_and_turns_agree()
    {
        Close(Theirs.Temperature.FromDegreesFahrenheit(68).DegreesCelsius, Ours.Temperature.FromFahrenheit(68).Celsius);
        Close(Theirs.Temperature.FromDegreesCelsius(20).Kelvins, Ours.Temperature.FromCelsius(20).Kelvin);
        Close(
            Theirs.RotationalSpeed.FromRevolutionsPerMinute(120).RadiansPerSecond,
            Ours.RotationalSpeed.FromRevolutionsPerMinute(120).RadiansPerSecond);
    }

    private static double Full(string word, Ours.UnitOrigin system) =>
        Assert.IsType<Ours.UnitName.OfVolume>(Ours.UnitNames.Find(word, system)).One.Millilitres;

    private static void Close(double expected, double actual) =>
        Assert.Equal(expected, actual, Math.Abs(expected) * Relative);
}
