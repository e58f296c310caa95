using StudioBot.Chat.Reading.Values;
using StudioBot.Chat.Tests.Support;

namespace StudioBot.Chat.Tests.Reading.Values;

public sealed class FilmSlotTests
{
    [Theory]
    [InlineData("3mm", "film_mm=3")]
    [InlineData("film 1.4mm", "film_mm=1.4")]
    [InlineData("0.2 cm thick", "film_mm=2")]
    [InlineData("1/8 in film", "film_mm=3.175")]
    public void A_film_is_a_thin_length(string typed, string understood) =>
        Assert.Equal(understood, OneSlot.Read(new FilmSlot(), typed));

    [Theory]
    [InlineData("film 30mm", "“30mm” is no film: from 0.05 to 20 mm")]
    [InlineData("film 0.01mm", "“0.01mm” is no film: from 0.05 to 20 mm")]
    public void What_runs_off_or_vanishes_is_no_film(string typed, string understood) =>
        Assert.Equal(understood, OneSlot.Read(new FilmSlot(), typed));
}
