using StudioBot.Chat.Reading.Values;
using StudioBot.Chat.Tests.Support;

namespace StudioBot.Chat.Tests.Reading.Values;

public sealed class PersonSlotTests
{
    [Theory]
    [InlineData("Pia", "member=Pia")]
    [InlineData("pia", "member=Pia")]
    [InlineData("mine", "member=me")]
    [InlineData("me", "member=me")]
    public void A_member_is_named_or_oneself(string typed, string understood) =>
        Assert.Equal(understood, OneSlot.Read(new PersonSlot("member") { MayBeMe = true }, typed));

    [Theory]
    [InlineData("Jonas", "name=Jonas")]
    public void One_that_is_invited_may_be_new(string typed, string understood) =>
        Assert.Equal(understood, OneSlot.Read(new PersonSlot("name") { MayBeNew = true }, typed));

    [Theory]
    [InlineData("to kitty", "to=kitty")]
    [InlineData("to Pia", "to=Pia")]
    public void Money_may_go_to_the_kitty(string typed, string understood) =>
        Assert.Equal(understood, OneSlot.Read(new PersonSlot("to") { Purse = "kitty" }, typed));

    [Theory]
    [InlineData("for Pia", "member=Pia")]
    [InlineData("by Pia", "member=Pia")]
    public void A_lead_may_be_needed(string typed, string understood) =>
        Assert.Equal(understood, OneSlot.Read(new PersonSlot("member") { Leads = ["for", "by"] }, typed));
}
