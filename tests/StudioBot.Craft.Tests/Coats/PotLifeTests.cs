using CsCheck;
using StudioBot.Craft.Coats;
using StudioBot.Craft.Units;

namespace StudioBot.Craft.Tests.Coats;

public sealed class PotLifeTests
{
    private static readonly PotLife Sheet = new(TimeSpan.FromMinutes(40), Celsius(25));

    [Theory]
    [InlineData(15, 80)]    // ten degrees cooler: twice as long
    [InlineData(25, 40)]    // the sheet's own temperature
    [InlineData(30, 28.3)]
    public void Ten_degrees_halve_it(double celsius, double minutes) =>
        Assert.Equal(minutes, Value(Sheet.ByTenDegrees(Celsius(celsius))).TotalMinutes, 0.05);

    [Fact]
    public void The_rule_and_arrhenius_agree_at_one_energy()
    {
        // A retrieved chemistry answer: 52.95 kJ/mol from 25 °C.
        var energy = ActivationEnergy.FromKilojoulesPerMole(52.95);
        var (rule, arrhenius) = (Sheet.ByTenDegrees(Celsius(35)), Sheet.In(Celsius(35), energy));

        Assert.Equal(Value(rule).TotalMinutes, Value(arrhenius).Likely.TotalMinutes, 0.01);
    }

    [Fact]
    public void The_band_holds_the_likely_time() =>
        Gen.Double[10, 40].Sample(celsius =>
        {
            var time = Value(Sheet.In(Celsius(celsius)));
            return time.Shortest <= time.Likely && time.Likely <= time.Longest;
        });

    [Fact]
    public void A_warmer_cup_never_waits_longer() =>
        Gen.Select(Gen.Double[10, 40], Gen.Double[10, 40]).Sample((one, other) =>
            Value(Sheet.In(Celsius(Math.Max(one, other)))).Likely
            <= Value(Sheet.In(Celsius(Math.Min(one, other)))).Likely);

    [Theory]
    [InlineData(14)]    // may never cure well
    [InlineData(31)]
    [InlineData(36)]    // more than ten degrees from the sheet
    public void Edges_are_cautioned(double celsius) =>
        Assert.IsType<Finding<WorkingTime>.Cautioned>(Sheet.In(Celsius(celsius)));

    [Fact]
    public void In_the_cold_there_is_no_figure()
    {
        Assert.IsType<Finding<WorkingTime>.None>(Sheet.In(Celsius(9.9)));
        Assert.IsType<Finding<TimeSpan>.None>(Sheet.ByTenDegrees(Celsius(-40)));
    }

    [Fact]
    public void A_pot_life_is_some_time() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => new PotLife(TimeSpan.Zero, Celsius(20)));

    private static T Value<T>(Finding<T> finding) => finding switch
    {
        Finding<T>.Found(var value) => value,
        Finding<T>.Cautioned(var value, _) => value,
        _ => throw new InvalidOperationException($"No figure: {finding}."),
    };

    private static Temperature Celsius(double value) => Temperature.FromCelsius(value);
}
