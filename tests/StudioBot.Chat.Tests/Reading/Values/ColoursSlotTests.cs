using StudioBot.Chat.Reading.Values;
using StudioBot.Chat.Tests.Support;

namespace StudioBot.Chat.Tests.Reading.Values;

public sealed class ColoursSlotTests
{
    [Theory]
    [InlineData("6 colours", "colours=6")]
    [InlineData("six colors", "colours=6")]
    [InlineData("white, lamp black", "colours=2; colour_names=white|lamp black")]
    [InlineData("3 cols", "colours=3")]
    public void Colours_are_counted_or_named(string typed, string understood) =>
        Assert.Equal(understood, OneSlot.Read(new ColoursSlot(), typed));

    [Theory]
    [InlineData("0 colours", "“0 colours” is too few: at least one")]
    [InlineData("1.5 colours", "“1.5 colours” is no number of colours")]
    [InlineData("99 colours", "“99 colours” is no number of colours")]
    public void What_no_pour_takes_is_a_slip(string typed, string understood) =>
        Assert.Equal(understood, OneSlot.Read(new ColoursSlot(), typed));
}
