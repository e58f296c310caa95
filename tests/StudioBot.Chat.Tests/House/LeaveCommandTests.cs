using StudioBot.Chat.Replies;
using StudioBot.Chat.Tests.Support;

namespace StudioBot.Chat.Tests.House;

public sealed class LeaveCommandTests : IDisposable
{
    private const long PiaAccount = 502;

    private readonly LiveStudio studio = LiveStudio.Empty();

    public LeaveCommandTests() => studio.File.Write(session =>
        session.Members.AddAccount(PiaAccount, session.Members.All().First(member => member.Name == "Pia").Id, studio.Now));

    public void Dispose() => studio.Dispose();

    [Fact]
    public void Leaving_is_asked_first()
    {
        var reply = studio.Say("leave", by: "Pia").Reply;

        Assert.True(reply.IsTrouble);
        Assert.True(Assert.Single(reply.Buttons) is { Line: "leave", Agrees: true });
        Assert.Contains(Names(), name => name == "Pia");
    }

    [Fact]
    public void Who_agrees_is_gone_and_what_they_booked_is_not()
    {
        studio.Say("room 20C 58%", by: "Pia");
        var outcome = studio.Say("leave", by: "Pia", agreed: true);

        Assert.StartsWith("You have left, Pia.", outcome.Reply.PlainText, StringComparison.Ordinal);
        Assert.DoesNotContain("Pia", Names());
        Assert.Equal(20, studio.Look(view => view.Rooms.Current()).Single().Temperature.Celsius, 6);
        Assert.Empty(outcome.Reply.Buttons);      // an undo could be pressed by no stranger
    }

    [Fact]
    public void A_steward_hears_of_it_and_can_take_it_back()
    {
        var aside = Assert.Single(studio.Say("leave", by: "Pia", agreed: true).Asides);

        Assert.Equal(("Mira", "Pia has left the studio."), (aside.To.Name, aside.Reply.PlainText));
        studio.Say(Assert.Single(aside.Reply.Buttons).Line);
        Assert.Contains("Pia", Names());
    }

    [Fact]
    public void The_last_steward_stays()
    {
        var reply = studio.Say("leave", agreed: true).Reply;

        Assert.True(reply.IsTrouble);
        Assert.Contains("last steward", reply.PlainText, StringComparison.Ordinal);
        Assert.Contains("Mira", Names());
    }

    [Fact]
    public void Of_two_stewards_one_may_leave()
    {
        studio.Say("role Pia steward");

        Assert.False(studio.Say("leave", agreed: true).Reply.IsTrouble);
    }

    [Fact]
    public void Who_left_is_a_stranger_until_an_invitation_brings_them_back_under_their_name()
    {
        studio.Say("leave", by: "Pia", agreed: true);
        Assert.Contains("invitation", studio.SayFrom(PiaAccount, "Pia", "stock").Reply.PlainText, StringComparison.Ordinal);
        var code = Code(studio.Say("invite Pia").Reply);

        var reply = studio.SayFrom(PiaAccount, "Pia", code).Reply;

        Assert.StartsWith("Welcome, Pia.", reply.PlainText, StringComparison.Ordinal);
        Assert.Equal(["Mira", "Pia"], Names());
    }

    [Fact]
    public void Told_together_with_another_record_both_stand_once_agreed_to()
    {
        var reply = studio.Say("leave\nroom 20C 58%", by: "Pia").Reply;
        var button = Assert.Single(reply.Buttons);

        Assert.False(studio.Say(button.Line, by: "Pia", agreed: button.Agrees).Reply.IsTrouble);
        Assert.Equal(["Mira"], Names());
        Assert.Single(studio.Look(view => view.Rooms.Current()));
    }

    private static string Code(Reply reply) => reply.Blocks.OfType<Block.Sample>().Single().Text;

    private List<string> Names() => studio.Look(view => view.Members.All().Select(member => member.Name).ToList());
}
