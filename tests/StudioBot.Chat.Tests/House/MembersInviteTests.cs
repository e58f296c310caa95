using StudioBot.Chat.Replies;
using StudioBot.Chat.Tests.Support;
using StudioBot.Records.Members;

namespace StudioBot.Chat.Tests.House;

public sealed class MembersInviteTests : IDisposable
{
    private const long New = 777;

    private readonly LiveStudio studio = LiveStudio.Empty();

    public void Dispose() => studio.Dispose();

    [Fact]
    public void An_invitation_shows_its_code_and_how_long_it_is_good()
    {
        var code = new string('A', 28);           // 28 letters out of 24 are 128 bits
        Assert.Equal(
            $"""
            An invitation for Jonas, as a member.
            To be sent to me in private:
              join {code}
            Good once, until Thu 26 Nov 10:00. Pass it on now: it is not shown again.
            """.ReplaceLineEndings("\n"),
            studio.Hear("members invite Jonas"));
    }

    [Fact]
    public void It_lets_one_in_and_no_second()
    {
        var code = Code(studio.Say("invite Jonas").Reply);

        Assert.StartsWith("Welcome, Jonas.", studio.SayFrom(New, "Jonas", code).Reply.PlainText, StringComparison.Ordinal);
        Assert.Contains("invitation", studio.SayFrom(New + 1, "Nora", code).Reply.PlainText, StringComparison.Ordinal);
        Assert.Equal([("Mira", Role.Steward), ("Pia", Role.Member), ("Jonas", Role.Member)], All());
    }

    [Fact]
    public void After_a_day_it_is_good_no_more()
    {
        var code = Code(studio.Say("invite Jonas").Reply);

        studio.Now += TimeSpan.FromHours(24);
        Assert.Contains("invitation", studio.SayFrom(New, "Jonas", code).Reply.PlainText, StringComparison.Ordinal);
    }

    [Fact]
    public void Taken_back_it_is_void()
    {
        var outcome = studio.Say("invite Jonas");
        studio.Say(outcome.Reply.Buttons.Single(button => button.Label == "Undo").Line);

        studio.Now += TimeSpan.FromSeconds(1);
        Assert.Contains("invitation", studio.SayFrom(New, "Jonas", Code(outcome.Reply)).Reply.PlainText, StringComparison.Ordinal);
    }

    [Fact]
    public void A_steward_can_be_invited()
    {
        var code = Code(studio.Say("invite Jonas steward").Reply);
        studio.SayFrom(New, "Jonas", code);

        Assert.Contains(("Jonas", Role.Steward), All());
    }

    [Fact]
    public void Who_belongs_to_it_already_is_not_invited_but_may_need_a_new_account()
    {
        var reply = studio.Say("invite Pia").Reply;

        Assert.True(reply.IsTrouble);
        Assert.Equal("members new account Pia", Assert.Single(reply.Buttons).Line);
    }

    [Fact]
    public void A_new_account_speaks_for_the_same_member_and_the_old_one_for_nobody()
    {
        const long old = 502;
        var pia = studio.Look(view => view.Members.All()).First(member => member.Name == "Pia").Id;
        studio.File.Write(session => session.Members.AddAccount(old, pia, studio.Now));
        var code = Code(studio.Say("members new account Pia").Reply);

        Assert.StartsWith("Welcome, Pia.", studio.SayFrom(New, "P.", code).Reply.PlainText, StringComparison.Ordinal);
        Assert.Equal([New], studio.Look(view => view.Members.Accounts(pia)));
        Assert.Equal(2, All().Count);
    }

    [Fact]
    public void A_new_account_of_one_who_left_meanwhile_lets_nobody_in()
    {
        var code = Code(studio.Say("members new account Pia").Reply);
        studio.Say("leave", by: "Pia", agreed: true);

        Assert.Contains("invitation", studio.SayFrom(New, "Pia", code).Reply.PlainText, StringComparison.Ordinal);
        Assert.Equal([("Mira", Role.Steward)], All());
    }

    [Fact]
    public void The_account_of_one_who_left_does_not_come_back_as_somebody_else()
    {
        const long jonas = 503;
        studio.SayFrom(jonas, "Jonas", Code(studio.Say("invite Jonas").Reply));
        studio.Say("leave", by: "Jonas", agreed: true);
        var code = Code(studio.Say("members new account Pia").Reply);

        Assert.Contains("invitation", studio.SayFrom(jonas, "Jonas", code).Reply.PlainText, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("/invite Jonas", "Mira", ChatKind.Group)]     // anybody could read it
    [InlineData("invite Jonas", "Pia", ChatKind.Private)]     // no steward
    [InlineData("members new account Nobody", "Mira", ChatKind.Private)]
    public void Not_everywhere_not_by_everyone_not_for_anybody(string words, string by, ChatKind chat)
    {
        var outcome = studio.Say(words, by, chat: chat);

        Assert.True(outcome.Reply.IsTrouble, outcome.Reply.PlainText);
        Assert.DoesNotContain("AAAA", outcome.Reply.PlainText, StringComparison.Ordinal);
    }

    private static string Code(Reply reply) => reply.Blocks.OfType<Block.Sample>().Single().Text;

    private List<(string Name, Role Role)> All() =>
        studio.Look(view => view.Members.All().Select(member => (member.Name, member.Role)).ToList());
}
