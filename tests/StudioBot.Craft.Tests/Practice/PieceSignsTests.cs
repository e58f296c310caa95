using StudioBot.Craft.Air;
using StudioBot.Craft.Practice;
using StudioBot.Craft.Tests.Pours;
using StudioBot.Craft.Units;

namespace StudioBot.Craft.Tests.Practice;

public sealed class PieceSignsTests
{
    private static readonly PieceSigns Unknown = new() { MostWater = 0.3 };

    [Fact]
    public void What_is_not_on_record_says_nothing() =>
        Assert.All(Enum.GetValues<CauseSign>(), sign => Assert.Equal(SignVerdict.Silent, Unknown.Of(sign)));

    [Theory]
    // common practice: cold below 18 °C, hot from 27 °C, blush from 70 %
    [InlineData(12, 50, CauseSign.ColdRoom, SignVerdict.For)]
    [InlineData(22, 50, CauseSign.ColdRoom, SignVerdict.Against)]
    [InlineData(19, 50, CauseSign.ColdRoom, SignVerdict.Silent)]
    [InlineData(30, 50, CauseSign.HotRoom, SignVerdict.For)]
    [InlineData(20, 75, CauseSign.DampRoom, SignVerdict.For)]
    [InlineData(20, 45, CauseSign.DampRoom, SignVerdict.Against)]
    public void The_room_speaks(double celsius, double percent, CauseSign sign, SignVerdict expected)
    {
        var air = new RoomAir(Temperature.FromCelsius(celsius), RelativeHumidity.FromPercent(percent));

        Assert.Equal(expected, (Unknown with { Air = air }).Of(sign));
    }

    [Theory]
    // a bloom lays 2.0 to 3.2 mm and a tenth to a third more runs off (common practice)
    [InlineData(4.5, CauseSign.ThickFilm, SignVerdict.For)]
    [InlineData(3.0, CauseSign.ThickFilm, SignVerdict.Against)]
    [InlineData(1.5, CauseSign.ThinFilm, SignVerdict.For)]
    public void The_film_speaks_by_its_technique(double millimetres, CauseSign sign, SignVerdict expected)
    {
        var signs = Unknown with { Technique = Techniques.Bloom, Poured = Length.FromMillimetres(millimetres) };

        Assert.Equal(expected, signs.Of(sign));
    }

    [Fact]
    public void A_ring_pour_has_no_activator() =>
        Assert.Equal(SignVerdict.For, (Unknown with { Technique = Techniques.RingPour }).Of(CauseSign.NoActivator));

    [Theory]
    [InlineData(3, SignVerdict.Against)]
    [InlineData(5, SignVerdict.Silent)]
    [InlineData(6, SignVerdict.For)]
    public void Three_or_four_colours_stay_clean(int colours, SignVerdict expected) =>
        Assert.Equal(expected, (Unknown with { Colours = colours }).Of(CauseSign.ManyColours));
}
