using StudioBot.Craft.Coats;
using StudioBot.Craft.Units;

namespace StudioBot.Craft.Tests.Coats;

public sealed class CureScheduleTests
{
    private static readonly DateTimeOffset Poured = new(2026, 3, 2, 18, 0, 0, TimeSpan.Zero);

    [Fact]
    public void At_the_sheets_temperature_it_is_the_sheets()
    {
        var schedule = Found((0, 21));

        Assert.Equal(Poured.AddHours(24), schedule.HandlingBy, TimeSpan.FromSeconds(1));
        Assert.Equal(Poured.AddDays(7), Full(schedule), TimeSpan.FromSeconds(1));
    }

    [Fact]
    public void Below_eighteen_degrees_it_may_be_moved_but_never_is_done()
    {
        // From memory: full cure may stop short below 18 °C, whatever the time.
        var schedule = Found((0, 17));

        Assert.True(schedule.HandlingBy > Poured.AddHours(24));
        Assert.IsType<Finding<DateTimeOffset>.None>(schedule.FullCure);
    }

    [Fact]
    public void Hours_below_eighteen_do_not_count_for_full_cure() =>
        Assert.Equal(Poured.AddDays(7).AddHours(10), Full(Found((0, 21), (20, 17), (30, 21))), TimeSpan.FromSeconds(1));

    [Fact]
    public void In_the_cold_nothing_can_be_said() =>
        Assert.IsType<Finding<CureSchedule>.None>(CureSchedule.Of(Kits.Times, Poured, Film((0, 8))));

    private static CureSchedule Found(params (double Hour, double Celsius)[] film) =>
        Assert.IsType<Finding<CureSchedule>.Found>(CureSchedule.Of(Kits.Times, Poured, Film(film))).Value;

    private static DateTimeOffset Full(CureSchedule schedule) =>
        Assert.IsType<Finding<DateTimeOffset>.Found>(schedule.FullCure).Value;

    private static IReadOnlyList<FilmReading> Film(params (double Hour, double Celsius)[] readings) =>
        [.. readings.Select(one => new FilmReading(Poured.AddHours(one.Hour), Temperature.FromCelsius(one.Celsius)))];
}
