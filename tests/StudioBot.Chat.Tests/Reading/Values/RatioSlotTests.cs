using StudioBot.Chat.Reading.Values;
using StudioBot.Chat.Tests.Support;

namespace StudioBot.Chat.Tests.Reading.Values;

public sealed class RatioSlotTests
{
    [Theory]
    [InlineData("3:1", "ratio=3:1; by=volume")]
    [InlineData("2/1", "ratio=2:1; by=volume")]
    [InlineData("3 to 1", "ratio=3:1; by=volume")]
    [InlineData("100:45 by weight", "ratio=100:45; by=weight")]
    [InlineData("by weight 100:45", "ratio=100:45; by=weight")]
    public void Parts_stand_to_parts(string typed, string understood) =>
        Assert.Equal(understood, OneSlot.Read(new RatioSlot(), typed));

    [Theory]
    [InlineData("3:0", "“3:0” has a part of nothing: each is above zero")]
    [InlineData("3;1", "“3;1” is not a ratio: parts are split by a colon")]
    [InlineData("1000000000:1", "“1000000000:1” is too wide: the small part can't be measured")]
    [InlineData("3:1 2:1", "“2:1” is a second ratio: one mixture has one")]
    public void What_cannot_be_measured_is_a_slip(string typed, string understood) =>
        Assert.Equal(understood, OneSlot.Read(new RatioSlot(), typed));
}
