using StudioBot.Craft.Drying;
using StudioBot.Craft.Tests.Whole;
using StudioBot.Craft.Units;

namespace StudioBot.Craft.Tests.Drying;

public sealed class ScaledTimeTests
{
    [Theory]
    // Common practice at about 20 °C and 55 %: a skim 3 to 5 days, a usual pour 7 to 14, a thick one 3 to 4 weeks.
    [InlineData(1.2, 3.0)]
    [InlineData(1.5, 4.4)]
    [InlineData(2.5, 10.7)]
    [InlineData(4.0, 24.3)]
    public void A_thick_film_takes_far_longer(double millimetres, double days) =>
        Assert.Equal(days, Days(ScaledTime.ReadyForResin.In(Rooms.Of(20, 55), Film(millimetres))), 0.06);

    [Fact]
    public void Dry_to_the_touch_grows_with_the_film() =>
        // Common practice: 36 h at 2.5 mm; the first stage dries as open water, so twice the film is twice the time.
        Assert.Equal(3, Days(ScaledTime.TouchDry.In(Rooms.Of(23, 50), Film(5))), 6);

    [Theory]
    [InlineData(9, 50)]
    [InlineData(20, 99)]
    public void In_the_cold_and_in_wet_air_there_is_no_time(double celsius, double percent) =>
        Assert.IsType<Finding<TimeSpan>.None>(
            ScaledTime.ReadyForResin.In(Rooms.Of(celsius, percent), Film(2.5)));

    [Theory]
    [InlineData(0.9)]
    [InlineData(2.1)]
    public void The_exponent_lies_between_the_two_stages(double exponent) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => new ScaledTime(TimeSpan.FromHours(36), Film(2), exponent));

    private static double Days(Finding<TimeSpan> finding) =>
        Assert.IsType<Finding<TimeSpan>.Found>(finding).Value.TotalDays;

    private static Length Film(double millimetres) => Length.FromMillimetres(millimetres);
}
