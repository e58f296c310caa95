using StudioBot.Craft.Coats;
using StudioBot.Craft.Units;

namespace StudioBot.Craft.Tests.Coats;

public sealed class RecoatWindowTests
{
    private static readonly DateTimeOffset Poured = new(2026, 3, 2, 18, 0, 0, TimeSpan.Zero);

    [Fact]
    public void At_the_sheets_temperature_it_is_the_sheets()
    {
        var window = Found(Film((0, 21)));

        Assert.Equal(Poured.AddHours(3), window.OpensFrom, TimeSpan.FromSeconds(1));
        Assert.Equal(Poured.AddHours(6), window.OpensBy, TimeSpan.FromSeconds(1));
        Assert.Equal(Poured.AddHours(12), window.ClosesFrom, TimeSpan.FromSeconds(1));
        Assert.Equal(Poured.AddHours(24), window.ClosesBy, TimeSpan.FromSeconds(1));
    }

    [Fact]
    public void A_cool_night_counts_hour_by_hour()
    {
        // By hand at 50 and 60 kJ/mol: 16 °C runs at exp(E/R·(1/294.15 − 1/289.15)) = 0.702 and 0.654 of 21 °C.
        // 4 h at 21, 8 h at 16: 4 + 5.62 = 9.62 and 4 + 5.23 = 9.23 of 12 h; the rest at 21 again.
        var window = Found(Film((0, 21), (4, 16), (12, 21)));

        Assert.Equal(14.38, (window.ClosesFrom - Poured).TotalHours, 0.02);
        Assert.Equal(26.77, (window.ClosesBy - Poured).TotalHours, 0.02);
    }

    [Fact]
    public void The_last_temperature_holds_on_and_the_first_reaches_back()
    {
        Assert.Equal(Found(Film((0, 19))), Found(Film((2, 19))));
        Assert.Equal(Found(Film((0, 19))), Found(Film((-30, 25), (-5, 19))));
    }

    [Fact]
    public void A_cold_film_closes_later_and_by_a_wider_interval()
    {
        var (warm, cool) = (Found(Film((0, 21))), Found(Film((0, 17))));

        Assert.True(cool.ClosesFrom > warm.ClosesFrom);
        Assert.True(cool.ClosesBy - cool.ClosesFrom > warm.ClosesBy - warm.ClosesFrom);
    }

    [Fact]
    public void It_is_surely_open_only_in_the_middle()
    {
        var window = Found(Film((0, 21)));

        Assert.False(window.IsOpen(Poured.AddHours(5)));
        Assert.True(window.IsOpen(Poured.AddHours(7)));
        Assert.False(window.IsOpen(Poured.AddHours(13)));
        Assert.True(window.MayHaveClosed(Poured.AddHours(13)));
    }

    [Theory]
    [InlineData(14)]
    [InlineData(31.5)]
    public void Edges_are_cautioned(double celsius) =>
        Assert.IsType<Finding<RecoatWindow>.Cautioned>(RecoatWindow.Of(Kits.Times, Poured, Film((0, celsius))));

    [Fact]
    public void A_night_in_the_cold_leaves_no_window()
    {
        Assert.IsType<Finding<RecoatWindow>.None>(RecoatWindow.Of(Kits.Times, Poured, Film((0, 21), (3, 8), (5, 21))));
        Assert.IsType<Finding<RecoatWindow>.None>(RecoatWindow.Of(Kits.Times, Poured, Film((0, -60))));
    }

    [Fact]
    public void Cold_after_it_has_closed_does_not_matter() =>
        Assert.IsType<Finding<RecoatWindow>.Found>(RecoatWindow.Of(Kits.Times, Poured, Film((0, 21), (40, 5))));

    [Fact]
    public void Without_a_temperature_there_is_nothing_to_work_out() =>
        Assert.Throws<ArgumentException>(() => RecoatWindow.Of(Kits.Times, Poured, []));

    private static RecoatWindow Found(IReadOnlyList<FilmReading> film) =>
        Assert.IsType<Finding<RecoatWindow>.Found>(RecoatWindow.Of(Kits.Times, Poured, film)).Value;

    private static IReadOnlyList<FilmReading> Film(params (double Hour, double Celsius)[] readings) =>
        [.. readings.Select(one => new FilmReading(Poured.AddHours(one.Hour), Temperature.FromCelsius(one.Celsius)))];
}
