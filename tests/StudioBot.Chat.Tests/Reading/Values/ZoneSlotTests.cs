using StudioBot.Chat.Reading.Values;
using StudioBot.Chat.Tests.Support;

namespace StudioBot.Chat.Tests.Reading.Values;

public sealed class ZoneSlotTests
{
    [Theory]
    [InlineData("zone Europe/Vienna", "zone=Europe/Vienna")]
    [InlineData("zone america/new_york", "zone=America/New_York")]
    [InlineData("zone america/port-au-prince", "zone=America/Port-au-Prince")]
    [InlineData("zone sydney", "zone=Australia/Sydney")]
    public void A_zone_is_named_whole_or_by_its_city(string typed, string understood) =>
        Assert.Equal(understood, OneSlot.Read(new ZoneSlot(), typed));

    [Theory]
    [InlineData("zone", "“zone” needs a city behind it")]
    [InlineData("zone Nowhere/Land", "“Nowhere/Land” is no time zone: they are named by region and city")]
    [InlineData("zone Europe", "“Europe” is no time zone: they are named by region and city")]
    public void What_is_on_no_map_is_a_slip(string typed, string understood) =>
        Assert.Equal(understood, OneSlot.Read(new ZoneSlot(), typed));

    [Fact]
    public void It_is_said_back_whole() => Assert.Equal("zone Europe/Vienna", OneSlot.Say(new ZoneSlot(), "zone vienna"));
}
