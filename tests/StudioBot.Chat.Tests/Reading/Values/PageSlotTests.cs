using StudioBot.Chat.Reading.Values;
using StudioBot.Chat.Tests.Support;

namespace StudioBot.Chat.Tests.Reading.Values;

public sealed class PageSlotTests
{
    [Theory]
    [InlineData("page 2", "page=2")]
    [InlineData("page 38", "page=38")]
    [InlineData("page 0", "“0” is no page: they count from 1")]
    [InlineData("page 1.5", "“1.5” is no page: they count from 1")]
    [InlineData("2", "“2” has no place here")]
    public void A_page_is_a_whole_number_behind_its_word(string typed, string understood) =>
        Assert.Equal(understood, OneSlot.Read(new PageSlot(), typed));

    [Fact]
    public void It_is_said_back_as_typed() => Assert.Equal("page 2", OneSlot.Say(new PageSlot(), "page 2"));
}
