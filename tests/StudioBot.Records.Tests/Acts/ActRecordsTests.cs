using Microsoft.Data.Sqlite;
using StudioBot.Records.Acts;
using StudioBot.Records.Members;

namespace StudioBot.Records.Tests.Acts;

public sealed class ActRecordsTests : IDisposable
{
    private readonly TemporaryStudio studio = new();
    private readonly Member mira;
    private readonly Member pia;

    public ActRecordsTests() => (mira, pia) = studio.File.Write(session => (
        session.Members.Add("Mira", Role.Steward, Saying.Morning),
        session.Members.Add("Pia", Role.Member, Saying.Morning)));

    public void Dispose() => studio.Dispose();

    [Fact]
    public void An_act_comes_back_as_it_was_said()
    {
        var said = new NewAct("used", mira, "used 20 ml white tuesday for Pia", Saying.Morning)
        {
            For = pia,
            ChatId = -100,
            MessageId = 7,
            HappenedAt = Saying.Morning.AddDays(-1),
        };

        var act = studio.File.Write(session => session.Acts.Begin(said));

        Assert.Equal(act, studio.File.Read(view => view.Acts.Find(act.Id)));
        Assert.Equal(("used", "Mira", "Pia", "Pia"), (act.Kind, act.Author?.Name, act.For?.Name, act.Whose?.Name));
        Assert.Equal((-100L, 7L, said.Words), (act.ChatId, act.MessageId, act.Words));
        Assert.Equal((said.HappenedAt, said.WrittenAt, true), (act.HappenedAt, act.WrittenAt, act.Holds));
    }

    [Theory]
    [InlineData("used", "used 20 ml white", 0, true)]
    [InlineData("used", "used 20 ml white", 60, true)]        // within a minute
    [InlineData("used", "used 20 ml white", 61, false)]
    [InlineData("used", "  USED 20 ml  white ", 10, true)]    // capitals and blanks make no other words
    [InlineData("used", "used 25 ml white", 10, false)]
    public void The_same_words_within_a_minute_are_found(string kind, string words, double seconds, bool found)
    {
        studio.File.Write(session => session.Said("used", mira, "used 20 ml white"));

        var again = studio.File.Read(view =>
            view.Acts.SameAgain(mira, kind, words, Saying.Morning.AddSeconds(seconds)));

        Assert.Equal(found, again is not null);
    }

    [Theory]
    [InlineData("used", true)]
    [InlineData("bought", true)]
    [InlineData("pour", true)]
    [InlineData("coat", true)]
    [InlineData("paid", true)]
    [InlineData("dry", false)]
    [InlineData("room", false)]
    [InlineData("shelf", false)]
    public void Only_what_would_take_a_quantity_twice_is_asked_about(string kind, bool asked)
    {
        studio.File.Write(session => session.Said(kind, mira, "17"));

        var again = studio.File.Read(view => view.Acts.SameAgain(mira, kind, "17", Saying.Morning));

        Assert.Equal(asked, again is not null);
    }

    [Fact]
    public void Neither_another_authors_words_nor_those_taken_back_are_said_again()
    {
        studio.File.Write(session =>
        {
            session.Said("used", pia, "used 20 ml white");
            session.TakeBack(session.Said("used", mira, "used 20 ml white"), mira);
        });

        Assert.Null(studio.File.Read(view =>
            view.Acts.SameAgain(mira, "used", "used 20 ml white", Saying.Morning)));
    }

    [Fact]
    public void Ones_last_act_is_the_last_that_holds()
    {
        var (first, _, second) = studio.File.Write(session => (
            session.Said("used", mira, minute: 1), session.Said("used", pia, minute: 2),
            session.Said("dry", mira, minute: 3)));

        Assert.Equal(second, studio.File.Read(view => view.Acts.LastOf(mira)));
        studio.File.Write(session => session.TakeBack(second, mira));
        Assert.Equal(first, studio.File.Read(view => view.Acts.LastOf(mira)));
        studio.File.Write(session => session.TakeBack(first, mira));
        Assert.Null(studio.File.Read(view => view.Acts.LastOf(mira)));
    }

    [Fact]
    public void The_list_holds_the_last_ten_of_two_weeks_the_newest_first()
    {
        studio.File.Write(session =>
        {
            session.Said("opening");                                  // nobody's
            session.Said("used", mira, "too long ago", -15 * 24 * 60);
            session.Said("used", pia, "hers", 0);
            for (var minute = 1; minute <= 12; minute++)
            {
                session.Said("used", mira, $"number {minute}", minute);
            }
        });

        var (own, all) = studio.File.Read(view => (
            view.Acts.Recent(mira, Saying.Morning.AddMinutes(20)),
            view.Acts.Recent(null, Saying.Morning.AddMinutes(0.5))));

        Assert.Equal(Enumerable.Range(3, 10).Reverse().Select(n => $"number {n}"), own.Select(act => act.Words));
        Assert.Equal(10, all.Count);
        studio.File.Write(session => session.Said("used", pia, "old", -13 * 24 * 60));
        Assert.Equal(["hers", "old"], studio.File.Read(view => view.Acts.Recent(pia, Saying.Morning))
            .Select(act => act.Words));
    }

    [Fact]
    public void An_undo_is_begun_by_what_it_undoes()
    {
        Assert.Throws<ArgumentException>(() => studio.File.Write(session => session.Said("undo", mira)));
    }

    [Fact]
    public void Acts_come_by_their_numbers_in_the_order_they_were_written()
    {
        var (first, second) = studio.File.Write(session =>
            (session.Said("used", mira, "one"), session.Said("used", pia, "two")));

        Assert.Equal([first, second], studio.File.Read(view => view.Acts.These([second.Id, 999, first.Id])));
        Assert.Empty(studio.File.Read(view => view.Acts.These([])));
    }

    [Fact]
    public void The_list_of_a_chat_holds_what_was_written_there()
    {
        studio.File.Write(session =>
        {
            session.Acts.Begin(new NewAct("used", mira, "here", Saying.Morning) { ChatId = -100 });
            session.Acts.Begin(new NewAct("used", mira, "in private", Saying.Morning) { ChatId = 7 });
            session.Acts.Begin(new NewAct("used", pia, "hers", Saying.Morning) { ChatId = -100 });
        });

        Assert.Equal(
            ["here"], studio.File.Read(view => view.Acts.RecentIn(-100, mira, Saying.Morning)).Select(act => act.Words));
    }

    [Fact]
    public void What_a_message_wrote_is_found_while_it_holds()
    {
        Act Wrote(StudioSession session, long chat, long message) => session.Acts.Begin(
            new NewAct("used", mira, "used 20 ml white", Saying.Morning) { ChatId = chat, MessageId = message });

        var (one, two, pressed) = studio.File.Write(session =>
        {
            Wrote(session, -100, 8);
            Wrote(session, -200, 7);
            return (Wrote(session, -100, 7), Wrote(session, -100, 7), Wrote(session, -100, 9));
        });
        Assert.Equal([one, two, pressed], studio.File.Read(view => view.Acts.Of(-100, [7, 9])));

        studio.File.Write(session => session.Undo.Take(
            one.Id, new NewAct("undo", mira, "undo", Saying.Morning) { ChatId = -100, MessageId = 7 }));
        Assert.Equal([two, pressed], studio.File.Read(view => view.Acts.Of(-100, [7, 9])));
        Assert.Empty(studio.File.Read(view => view.Acts.Of(-300, [7])));
    }

    [Fact]
    public void An_act_has_words()
    {
        Assert.Throws<SqliteException>(() => studio.File.Write(session => session.Said("used", mira, "")));
    }
}
