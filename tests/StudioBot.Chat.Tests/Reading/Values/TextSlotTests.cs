using StudioBot.Chat.Reading.Values;
using StudioBot.Chat.Tests.Support;

namespace StudioBot.Chat.Tests.Reading.Values;

public sealed class TextSlotTests
{
    [Theory]
    [InlineData("Big cells, lower left!", "text=Big cells, lower left!")]
    [InlineData(": big cells", "text=big cells")]
    [InlineData("why so dull?", "text=why so dull?")]
    public void Words_are_kept_as_typed(string typed, string understood) =>
        Assert.Equal(understood, OneSlot.Read(new TextSlot("the words", "big cells"), typed));
}
