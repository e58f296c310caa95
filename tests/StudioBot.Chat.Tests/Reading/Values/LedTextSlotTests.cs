using StudioBot.Chat.Reading.Values;
using StudioBot.Chat.Tests.Support;

namespace StudioBot.Chat.Tests.Reading.Values;

public sealed class LedTextSlotTests
{
    [Theory]
    [InlineData("name The Pour House", "name=The Pour House")]
    [InlineData("name Studio 12, 2nd floor", "name=Studio 12, 2nd floor")]
    public void All_behind_the_word_is_kept_as_typed(string typed, string understood) =>
        Assert.Equal(understood, OneSlot.Read(Slot(), typed));

    [Theory]
    [InlineData("name", "“name” needs a name behind it")]
    [InlineData("name A house of a very long name", "“name” takes one line of at most 20 characters")]
    public void Nothing_and_too_much_are_slips(string typed, string understood) =>
        Assert.Equal(understood, OneSlot.Read(Slot(), typed));

    private static LedTextSlot Slot() => new("name", "name", "a name", "name The pour house") { Longest = 20 };
}
