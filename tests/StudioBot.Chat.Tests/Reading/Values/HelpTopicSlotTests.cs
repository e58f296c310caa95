using StudioBot.Chat.Reading.Values;
using StudioBot.Chat.Tests.Support;

namespace StudioBot.Chat.Tests.Reading.Values;

public sealed class HelpTopicSlotTests
{
    [Theory]
    [InlineData("resin", "topic=resin")]
    [InlineData("the weather", "")]
    public void Help_is_given_on_any_command(string typed, string understood) =>
        Assert.Equal(understood, OneSlot.Read(new HelpTopicSlot(), typed));
}
