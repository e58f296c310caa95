using StudioBot.Chat.Tests.Asking;
using StudioBot.Chat.Tests.Support;

namespace StudioBot.Chat.Tests.House;

public sealed class MembersShowTests
{
    [Fact]
    public void Everybody_stands_there_with_their_role()
    {
        var said = Phone.Says("members");

        Assert.StartsWith("4 members, 1 steward among them", said, StringComparison.Ordinal);
        Assert.Matches("Mira +steward", said);
        Assert.Matches("Jonas +member", said);
    }

    [Fact]
    public void Who_has_left_does_not()
    {
        var studio = new StockedStudio();
        studio.Write(session => session.Members.Leave(studio.Pia.Id, studio.Said(session, "leave", 20, who: studio.Pia)));

        var said = studio.Says("members");

        Assert.StartsWith("1 member, 1 steward among them", said, StringComparison.Ordinal);
        Assert.DoesNotContain("Pia", said, StringComparison.Ordinal);
    }

    [Fact]
    public void It_fits_a_phone() => Phone.Fits("members");
}
