using StudioBot.Craft.Stock;

namespace StudioBot.Craft.Tests.Stock;

public sealed class ForecastTests
{
    [Fact]
    public void Without_use_it_does_not_last_for_ever_it_is_not_known() =>
        Assert.IsType<Finding<TimeSpan>.None>(Forecast.DaysOfCover(400, new DailyUse(0, 0)));

    [Fact]
    public void Less_than_nothing_asks_for_a_count() =>
        Assert.Equal("count it", Assert.IsType<Finding<TimeSpan>.None>(
            Forecast.DaysOfCover(-1, new DailyUse(10, 5))).Instead);

    [Fact]
    public void What_a_workshop_has_booked_is_gone_already() =>
        Assert.Equal(new Finding<TimeSpan>.Found(TimeSpan.FromDays(30)),
            Forecast.DaysOfCover(400, new DailyUse(10, 5), booked: 100));

    [Fact]
    public void Booked_beyond_the_shelf_is_cautioned() =>
        Assert.IsType<Finding<TimeSpan>.Cautioned>(Forecast.DaysOfCover(400, new DailyUse(10, 5), booked: 500));

    [Fact]
    public void Little_data_is_cautioned() => Assert.IsType<Finding<TimeSpan>.Cautioned>(
        Forecast.DaysOfCover(400, new DailyUse(10, 15, IsLittleData: true)));
}
