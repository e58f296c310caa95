using StudioBot.Chat.Reading.Values;
using StudioBot.Chat.Tests.Support;

namespace StudioBot.Chat.Tests.Reading.Values;

public sealed class NewNameSlotTests
{
    [Theory]
    [InlineData("new pearl white", "material=pearl white")]
    [InlineData("new Pearl White", "material=Pearl White")]
    [InlineData("pearl white", "")]
    public void A_new_name_goes_up_to_the_first_figure(string typed, string understood) =>
        Assert.Equal(understood, OneSlot.Read(
            new NewNameSlot("material", "a name", "pearl white") { Lead = "new" },
            typed));
}
