using StudioBot.Chat.Tests.Support;

namespace StudioBot.Chat.Tests.Asking;

public sealed class AirCommandTests
{
    [Theory]
    [InlineData("air 19C 72% surface 15C", "Resin: no", "13.8 °C", "1.2 °C")] // FAO-56 eq 11 inverted; margin 1.16
    [InlineData("air 21C 65% night 16C", "Resin: no", "14.2 °C", "1.8 °C")] // dew point 14.17, night margin 1.83
    [InlineData("air 22C 50% night 16C", "Resin: yes, with care", "11.1 °C", "4.9 °C")] // night margin 4.894
    public void Resin_keeps_three_degrees_from_the_dew_point(string words, string verdict, string dew, string margin)
    {
        var said = Phone.Says(words);

        Assert.StartsWith(verdict, said, StringComparison.Ordinal);
        Assert.Contains(dew, said, StringComparison.Ordinal);
        Assert.Contains(margin, said, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("air 19C 72%")]
    [InlineData("air 18C 80%")]
    [InlineData("air 20C 90%")]
    [InlineData("air 21C 65% night 16C")]
    [InlineData("air 22C 60% surface 15C night 22C")]
    public void The_cheapest_way_leads_to_yes(string words)
    {
        var refused = Sample.Answer(words)!;

        Assert.StartsWith("Resin: no", refused.PlainText, StringComparison.Ordinal);
        Assert.StartsWith("Resin: yes", Phone.Says(refused.Buttons[0].Line), StringComparison.Ordinal);
    }

    [Fact]
    public void The_reference_room_dries_once_as_fast() => // 23 °C, 50 %: the deficit that times are counted in
        Assert.Matches(@"= 1\)\s+1\n", Phone.Says("air 23C 50%"));

    [Fact]
    public void Without_values_the_room_last_read_is_taken_with_its_age() =>
        Assert.Contains("20 °C 55 %: studio 80 min ago. (Invented studio.)", Phone.Says("air"), StringComparison.Ordinal);

    [Fact]
    public void What_nobody_measured_is_said() =>
        Assert.Contains("Taken: piece 1 °C, night 4 °C under the air.", Phone.Says("air 21C 55%"), StringComparison.Ordinal);

    [Fact]
    public void Below_ten_degrees_no_resin_is_promised() // common practice: nobody can say whether it cures
    {
        var said = Phone.Says("air 8C 40%");

        Assert.StartsWith("Resin: no", said, StringComparison.Ordinal);
        Assert.Contains("Below 10 °C", said, StringComparison.Ordinal);
    }

    [Fact]
    public void Half_of_an_air_is_no_air() => Assert.Equal("error", Sample.Hear("air 19C").Kind);

    [Theory]
    [InlineData("air")]
    [InlineData("air 19C 72%")]
    [InlineData("air 19C 72% surface 15C")]
    [InlineData("air 1C 100%")]
    [InlineData("air surface 15C")]
    public void It_fits_a_phone(string words) => Phone.Fits(words);
}
