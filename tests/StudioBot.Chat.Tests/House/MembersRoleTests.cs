using StudioBot.Chat.Tests.Support;
using StudioBot.Records.Members;

namespace StudioBot.Chat.Tests.House;

public sealed class MembersRoleTests : IDisposable
{
    private readonly LiveStudio studio = LiveStudio.Empty();

    public void Dispose() => studio.Dispose();

    [Fact]
    public void A_member_becomes_a_steward_and_hears_of_it()
    {
        var outcome = studio.Say("role Pia steward");

        Assert.StartsWith("Pia is a steward now", outcome.Reply.PlainText, StringComparison.Ordinal);
        Assert.Equal(Role.Steward, Of("Pia"));
        var aside = Assert.Single(outcome.Asides);
        Assert.Equal("Pia", aside.To.Name);
        Assert.StartsWith("Mira made you a steward", aside.Reply.PlainText, StringComparison.Ordinal);
    }

    [Fact]
    public void The_last_steward_can_not_step_down()
    {
        Assert.Contains("last steward", studio.Hear("role Mira member"), StringComparison.Ordinal);
        Assert.Equal(Role.Steward, Of("Mira"));

        studio.Say("role Pia steward");
        studio.Say("role Mira member");
        Assert.Equal(Role.Member, Of("Mira"));
    }

    [Fact]
    public void Undo_gives_the_role_back()
    {
        studio.Say("role Pia steward");
        studio.Say("undo");

        Assert.Equal(Role.Member, Of("Pia"));
    }

    [Theory]
    [InlineData("role Pia member", "Mira", "Pia is a member already.")]
    [InlineData("role Pia steward", "Pia", "Only a steward may do that")]
    [InlineData("role Pia queen", "Mira", "roles are member and steward")]
    public void Nothing_changes_where_nothing_may(string words, string by, string why)
    {
        Assert.Contains(why, studio.Hear(words, by), StringComparison.Ordinal);
        Assert.Equal(Role.Member, Of("Pia"));
    }

    private Role Of(string name) => studio.Look(view => view.Members.All()).First(member => member.Name == name).Role;
}
