using StudioBot.Chat.Reading.Values;
using StudioBot.Chat.Tests.Support;

namespace StudioBot.Chat.Tests.Reading.Values;

public sealed class AirSlotTests
{
    [Theory]
    [InlineData("21C 55%", "temperature_c=21; humidity_pct=55")]
    [InlineData("55% 21C", "temperature_c=21; humidity_pct=55")]
    [InlineData("70F 60%", "temperature_c=21.111; humidity_pct=60")]   // (70 - 32) / 1.8
    public void A_temperature_and_a_humidity_may_stand_in_any_order(string typed, string understood) =>
        Assert.Equal(understood, OneSlot.Read(new AirSlot(), typed));

    [Theory]
    [InlineData("19C 72% surface 15C", "temperature_c=19; humidity_pct=72; surface_c=15")]
    [InlineData("19C 72% night 12C", "temperature_c=19; humidity_pct=72; night_c=12")]
    public void The_word_before_a_temperature_says_whose_it_is(string typed, string understood) =>
        Assert.Equal(understood, OneSlot.Read(new AirSlot(), typed));

    [Theory]
    [InlineData("60C 21%", "“60C” is no temperature of a studio: are the two swapped?")]
    [InlineData("-300C 50%", "“-300C” is below absolute zero")]
    [InlineData("21C 120%", "“120%” is no humidity of a room: above 0, up to 100 %")]
    [InlineData("21C 22C 50%", "“22C” is a second temperature: write surface before it")]
    public void What_no_studio_has_is_a_slip(string typed, string understood) =>
        Assert.Equal(understood, OneSlot.Read(new AirSlot(), typed));

    [Theory]
    [InlineData("21 55", "temperature_c=21; humidity_pct=55")]
    public void Of_two_bare_numbers_the_first_is_degrees(string typed, string understood) =>
        Assert.Equal(understood, OneSlot.Read(new AirSlot { TakesBare = true }, typed));

    [Theory]
    [InlineData("21C", "“” the humidity is missing")]
    [InlineData("55%", "“” the temperature is missing")]
    public void A_room_needs_both(string typed, string understood) =>
        Assert.Equal(understood, OneSlot.Read(new AirSlot { NeedsBoth = true }, typed));
}
