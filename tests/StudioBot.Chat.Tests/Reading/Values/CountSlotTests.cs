using StudioBot.Chat.Reading.Values;
using StudioBot.Chat.Tests.Support;

namespace StudioBot.Chat.Tests.Reading.Values;

public sealed class CountSlotTests
{
    [Theory]
    [InlineData("2 coats", "coats=2")]
    [InlineData("two coats", "coats=2")]
    [InlineData("one coat", "coats=1")]
    [InlineData("2 people", "“2” has no place here")]
    public void A_number_before_its_noun_counts(string typed, string understood) =>
        Assert.Equal(understood, OneSlot.Read(
            new CountSlot("coats", "a number of coats", ["coats", "coat"], 20),
            typed));

    [Theory]
    [InlineData("0 coats", "“0 coats” is too few: at least one")]
    [InlineData("1.5 coats", "“1.5 coats” is no whole number")]
    [InlineData("50 coats", "“50 coats” is more than a studio does")]
    public void What_nobody_does_is_a_slip(string typed, string understood) =>
        Assert.Equal(understood, OneSlot.Read(
            new CountSlot("coats", "a number of coats", ["coats", "coat"], 20),
            typed));
}
