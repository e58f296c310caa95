using StudioBot.Chat.Replies;
using StudioBot.Chat.Tests.Support;
using StudioBot.Records.Members;
using StudioBot.Records.Reminders;

namespace StudioBot.Chat.Tests.House;

/// <summary>Moments are worked by hand from Wednesday 25 November 2026, 10:00 in Vienna (9:00 UTC).</summary>
public sealed class RemindCommandTests : IDisposable
{
    private const long MiraAccount = 501;
    private const long PiaAccount = 502;

    private readonly LiveStudio studio = LiveStudio.Empty();

    public RemindCommandTests() => studio.File.Write(session =>
    {
        var members = session.Members.All();
        session.Members.AddAccount(MiraAccount, members.First(member => member.Name == "Mira").Id, studio.Now);
        session.Members.AddAccount(PiaAccount, members.First(member => member.Name == "Pia").Id, studio.Now);
    });

    public void Dispose() => studio.Dispose();

    [Theory]
    [InlineData("remind me in 2h torch", "I remind you Wed 25 Nov 12:00: torch.", "2026-11-25T11:00Z")]
    [InlineData("remind me fri 18:00 sand it", "I remind you Fri 27 Nov 18:00: sand it.", "2026-11-27T17:00Z")]
    [InlineData("remind me tomorrow to order white", "I remind you Thu 26 Nov 9:00: order white.", "2026-11-26T08:00Z")]
    [InlineData("remind 9:30 fan", "I remind you Thu 26 Nov 9:30: fan.", "2026-11-26T08:30Z")]
    [InlineData("remind me 3 Jan 10:00 fan", "I remind you Sun 3 Jan 2027 10:00: fan.", "2027-01-03T09:00Z")]
    [InlineData("remind me in 90 min", "I remind you Wed 25 Nov 11:30: the time is up.", "2026-11-25T10:30Z")]
    public void A_reminder_says_when_and_what(string words, string says, string at)
    {
        Assert.Equal(says, studio.Hear(words));
        Assert.Equal(DateTimeOffset.Parse(at, System.Globalization.CultureInfo.InvariantCulture), Planned().What.PlannedAt);
    }

    [Fact]
    public void It_comes_at_its_moment_and_once()
    {
        studio.Say("remind me in 2h torch");

        studio.Now += TimeSpan.FromMinutes(119);
        Assert.Empty(studio.Ring());
        studio.Now += TimeSpan.FromMinutes(1);
        var ping = Assert.Single(studio.Ring());
        Assert.Equal((MiraAccount, "You asked for it: torch."), (ping.Chat, ping.Reply.PlainText));
        studio.Now += TimeSpan.FromHours(2);
        Assert.Empty(studio.Ring());
    }

    [Fact]
    public void A_moment_in_quiet_hours_comes_in_the_morning_and_is_said_to()     // common practice: quiet from 22:00 to 8:00
    {
        Assert.Equal(
            "I remind you Wed 25 Nov 23:00: fan.\nQuiet hours then, 22:00 to 8:00: it comes Thu 26 Nov 8:00.",
            studio.Hear("remind me 23:00 fan"));

        studio.Now = new DateTimeOffset(2026, 11, 25, 22, 0, 0, TimeSpan.Zero);   // 23:00 on the wall
        Assert.Empty(studio.Ring());
        studio.Now = new DateTimeOffset(2026, 11, 26, 7, 0, 0, TimeSpan.Zero);    // 8:00
        Assert.Single(studio.Ring());
    }

    [Fact]
    public void Whose_quiet_hours_are_shorter_is_reminded_at_once()
    {
        studio.Say("me quiet 0-7");

        Assert.Equal("I remind you Wed 25 Nov 23:00: fan.", studio.Hear("remind me 23:00 fan"));
    }

    [Fact]
    public void A_piece_is_named_as_it_was_typed()
    {
        using var sample = LiveStudio.Sample();

        Assert.Contains("Fri 27 Nov 18:00: check 17.", sample.Hear("remind me fri 18:00 check 17"), StringComparison.Ordinal);
        Assert.Contains("Fri 27 Nov 18:00: piece 17.", sample.Hear("remind me fri 18:00 17"), StringComparison.Ordinal);
    }

    [Fact]
    public void Another_is_reminded_told_so_at_once_and_may_undo()
    {
        var outcome = studio.Say("remind Pia 18:00 sweep");

        Assert.StartsWith("I remind Pia Wed 25 Nov 18:00: sweep.", outcome.Reply.PlainText, StringComparison.Ordinal);
        var aside = Assert.Single(outcome.Asides);
        Assert.Equal("Pia", aside.To.Name);
        var undo = aside.Reply.Buttons.Single(button => button.Label == "Undo");

        studio.Now += TimeSpan.FromHours(8);
        var ping = Assert.Single(studio.Ring());
        Assert.Equal((PiaAccount, "Mira asked for it: sweep."), (ping.Chat, ping.Reply.PlainText));
        Assert.Contains("Taken back", studio.Hear(undo.Line, by: "Pia"), StringComparison.Ordinal);
    }

    [Fact]
    public void What_was_taken_back_is_not_said()
    {
        studio.Say("remind me in 2h torch");
        studio.Say("undo");

        studio.Now += TimeSpan.FromHours(2);
        Assert.Empty(studio.Ring());
    }

    [Fact]
    public void Who_has_left_is_reminded_of_nothing()
    {
        studio.Say("remind me in 2h torch", by: "Pia");
        studio.Say("leave", by: "Pia", agreed: true);

        studio.Now += TimeSpan.FromHours(2);
        Assert.Empty(studio.Ring());
    }

    [Fact]
    public void Nobody_is_reminded_in_the_place_of_one_who_has_left()
    {
        studio.Say("leave", by: "Pia", agreed: true);

        Assert.StartsWith("Pia belongs to the studio no more.", studio.Hear("remind Pia 18:00 sweep"), StringComparison.Ordinal);
        Assert.Equal(0, studio.Look(view => view.Reminders.Waiting()));
    }

    [Theory]
    [InlineData("remind me 25 Nov 2026 9:00 fan", "Wed 25 Nov 9:00 is over. Nothing recorded.")]
    [InlineData("remind me fan", "The time is missing. Nothing recorded.")]
    [InlineData("remind me in 2h fri 18:00 fan", "There are two times: in how long, or when. Nothing recorded.")]
    public void What_can_not_be_kept_is_not(string words, string why)
    {
        var reply = studio.Say(words).Reply;

        Assert.True(reply.IsTrouble);
        Assert.Equal(why, ((Block.Headline)reply.Blocks[0]).Text);
        Assert.Equal(0, studio.Look(view => view.Reminders.Waiting()));
    }

    [Fact]
    public void Who_switched_reminders_off_is_offered_to_switch_them_on()
    {
        studio.Say("me mute asked");

        var reply = studio.Say("remind me in 2h torch").Reply;
        Assert.True(reply.IsTrouble);
        studio.Say(Assert.Single(reply.Buttons).Line);
        Assert.False(studio.Say("remind me in 2h torch").Reply.IsTrouble);
    }

    [Fact]
    public void A_request_is_no_setting_of_the_studio()
    {
        studio.Say("remind me in 2h torch");

        Assert.DoesNotContain("torch", studio.Hear("studio"), StringComparison.Ordinal);
    }

    [Fact]
    public void Long_words_leave_the_reply_on_one_screen()
    {
        var words = string.Join(' ', Enumerable.Repeat("wipe", 100));
        Assert.True(LineBudget.Of(studio.Say($"remind me 23:00 {words}").Reply) <= LineBudget.Lines);
    }

    private Reminder Planned() => studio.Look(view =>
        Assert.Single(view.Acts.Recent(null, studio.Now)
            .SelectMany(act => view.Reminders.About($"Request/{act.Id}"))));
}
