using StudioBot.Records.Post;
using StudioBot.Records.Reminders;
using static StudioBot.Records.Tests.Saying;

namespace StudioBot.Records.Tests.Post;

public sealed class ChatMovesTests : IDisposable
{
    private const long Old = -5;
    private const long New = -1005;
    private const string Key = "q7Zt0sK3xW9bVn2L";

    private readonly TemporaryStudio studio = new();

    public void Dispose() => studio.Dispose();

    [Fact]
    public void A_chat_that_did_not_move_has_its_own_number()
    {
        Assert.Equal(Old, Now(Old));
    }

    [Fact]
    public void It_is_known_after_a_restart_and_told_again_it_is_no_news()
    {
        Assert.True(Move(Old, New));
        studio.Reopen();

        Assert.Equal(New, Now(Old));
        Assert.False(Move(Old, New));
    }

    [Fact]
    public void Who_moves_twice_is_found_from_either_number_and_back_again_ends_in_no_circle()
    {
        Move(Old, New);
        Move(New, -1006);
        Assert.Equal((-1006, -1006), (Now(Old), Now(New)));

        Move(-1006, Old);
        Assert.Equal((Old, Old, Old), (Now(Old), Now(New), Now(-1006)));
    }

    [Fact]
    public void What_waits_goes_to_the_new_number_at_once_and_readdressed()
    {
        Put(Old, "1");
        Put(8, "2");
        studio.File.Write(session => session.Post.Again(session.Post.Claim(Morning)!.Id, Morning.AddHours(1), "busy"));
        studio.File.Write(session => session.Moves.Move(Old, New, Morning, payload => $"[{payload}]"));

        var posts = new[] { Claim(), Claim(), Claim() }.OfType<Records.Post.Post>();
        Assert.Equal([(New, "[1]"), (8, "2")], posts.Select(post => (post.ChatId, post.Payload)));
    }

    [Fact]
    public void What_was_on_the_wire_meanwhile_follows_when_it_comes_back()
    {
        Put(Old, "1");
        var flying = Claim()!;
        Move(Old, New);
        studio.File.Write(session =>
        {
            session.Post.Again(flying.Id, Morning, "another number");
            session.Moves.Move(Old, New, Morning, payload => payload);
        });

        Assert.Equal(New, Claim()?.ChatId);
    }

    [Fact]
    public void What_is_put_for_the_old_number_later_goes_to_the_new_one()
    {
        Move(Old, New);
        Put(Old, "1");

        Assert.Equal(New, Claim()?.ChatId);
    }

    [Fact]
    public void Reminders_and_buttons_follow_and_sent_messages_are_found_no_more()
    {
        studio.File.Write(session =>
        {
            session.Reminders.Plan(new NewReminder("Week", "studio", Morning, "week 1") { ChatId = Old });
            session.Presses.Put(new Press(Key, null, Old, "undo act 1", Morning.AddDays(1)));
            session.Post.Put(Old, "1", Urgency.Reply, Morning, "answer 1");
            session.Post.Sent(session.Post.Claim(Morning)!.Id, Morning, messageId: 77);
        });
        Move(Old, New);

        Assert.Equal([New], studio.File.Read(view => view.Reminders.Due(Morning)).Select(one => one.What.ChatId));
        Assert.IsType<PressVerdict.Said>(studio.File.Write(session => session.Presses.Use(Key, 1, New, Morning)));
        Assert.Null(studio.File.Write(session => session.Post.PutOnce("answer 1"))?.MessageId);
    }

    private bool Move(long from, long to) =>
        studio.File.Write(session => session.Moves.Move(from, to, Morning, payload => payload));

    private long Now(long chat) => studio.File.Write(session => session.Moves.Now(chat));

    private void Put(long chat, string payload) =>
        studio.File.Write(session => session.Post.Put(chat, payload, Urgency.Reply, Morning));

    private Records.Post.Post? Claim() => studio.File.Write(session => session.Post.Claim(Morning));
}
