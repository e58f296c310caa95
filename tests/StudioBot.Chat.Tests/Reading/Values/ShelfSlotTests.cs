using StudioBot.Chat.Reading.Values;
using StudioBot.Chat.Tests.Support;

namespace StudioBot.Chat.Tests.Reading.Values;

public sealed class ShelfSlotTests
{
    [Theory]
    [InlineData("B3", "shelf=B3")]
    [InlineData("shelf b", "shelf=B")]
    [InlineData("to shelf B3", "shelf=B3")]
    [InlineData("17", "“17” has no place here")]
    public void A_shelf_has_a_letter_and_perhaps_a_number(string typed, string understood) =>
        Assert.Equal(understood, OneSlot.Read(new ShelfSlot(), typed));
}
