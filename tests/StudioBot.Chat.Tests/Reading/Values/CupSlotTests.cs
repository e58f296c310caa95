using StudioBot.Chat.Reading.Values;
using StudioBot.Chat.Tests.Support;

namespace StudioBot.Chat.Tests.Reading.Values;

public sealed class CupSlotTests
{
    [Theory]
    [InlineData("ford4 22 s", "cup=ford4; seconds=22")]
    [InlineData("ford 4 22s", "cup=ford4; seconds=22")]
    [InlineData("zahn #2 27 seconds", "cup=zahn2; seconds=27")]
    [InlineData("iso4", "cup=iso4")]
    public void A_flow_cup_has_a_make_and_a_number(string typed, string understood) =>
        Assert.Equal(understood, OneSlot.Read(new CupSlot(), typed));

    [Theory]
    [InlineData("ford9 22 s", "“ford9” is no flow cup: ford1-5, zahn1-5, iso3-6 and din4 are known")]
    public void A_cup_that_nobody_makes_is_a_slip(string typed, string understood) =>
        Assert.Equal(understood, OneSlot.Read(new CupSlot(), typed));
}
