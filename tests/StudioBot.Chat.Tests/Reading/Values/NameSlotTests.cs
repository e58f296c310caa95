using StudioBot.Chat.Reading;
using StudioBot.Chat.Reading.Values;
using StudioBot.Chat.Tests.Support;

namespace StudioBot.Chat.Tests.Reading.Values;

public sealed class NameSlotTests
{
    [Theory]
    [InlineData("bloom", "technique=bloom")]
    [InlineData("Bloom", "technique=bloom")]
    [InlineData("blom", "technique=bloom")]   // one letter short
    [InlineData("zorks", "“zorks” is no technique here")]
    public void A_name_of_the_studio_is_known(string typed, string understood) =>
        Assert.Equal(understood, OneSlot.Read(
            new NameSlot(NameKind.Technique, "technique", "a technique", "bloom"),
            typed));

    [Theory]
    [InlineData("in cupboard", "room=cupboard")]
    [InlineData("cupboard", "")]
    public void A_lead_may_be_needed(string typed, string understood) =>
        Assert.Equal(understood, OneSlot.Read(
            new NameSlot(NameKind.Room, "room", "a room", "in cupboard") { Leads = ["in"], NeedsLead = true },
            typed));
}
