using Dapper;
using Microsoft.Data.Sqlite;
using StudioBot.Records.Post;

namespace StudioBot.Records.Tests.Post;

public sealed class OutboxTests : IDisposable
{
    private const long Mira = 5;
    private const long Pia = 6;

    private static readonly DateTimeOffset Morning = new(2026, 11, 25, 9, 0, 0, TimeSpan.Zero);

    private readonly TemporaryStudio studio = new();

    public void Dispose() => studio.Dispose();

    [Fact]
    public void A_post_is_claimed_once()
    {
        Put(Mira, "a");

        var post = Claim();

        Assert.NotNull(post);
        Assert.Equal((Mira, Text("a"), 1, false), (post.ChatId, post.Payload, post.Tries, post.MaybeSent));
        Assert.Null(Claim());
    }

    [Fact]
    public void A_file_stays_with_its_post_and_goes_when_that_does()
    {
        var file = new PostFile("usage.csv", "text/csv", [1, 2, 3]);
        studio.File.Write(session => session.Post.Put(Mira, Text("a"), Urgency.Reply, Morning, "once", file));
        Assert.False(studio.File.Write(session => session.Post.Put(Mira, Text("a"), Urgency.Reply, Morning, "once", file)));

        var post = Claim()!;
        var kept = studio.File.Write(session => session.Post.FileOf(post.Id))!;
        Assert.Equal((file.Name, file.MediaType), (kept.Name, kept.MediaType));
        Assert.Equal(file.Content, kept.Content);

        studio.File.Write(session =>
        {
            session.Post.Sent(post.Id, Morning);
            session.Post.Prune(Morning + Outbox.Kept + TimeSpan.FromSeconds(1));
        });
        Assert.Null(studio.File.Write(session => session.Post.FileOf(post.Id)));
    }

    [Fact]
    public void Many_who_claim_at_once_get_each_post_once()
    {
        for (var chat = 1; chat <= 60; chat++)
        {
            Put(chat, "a");
        }

        var claimed = new long[6][];
        var senders = Enumerable.Range(0, 6).Select(sender => new Thread(() => claimed[sender] = ClaimAll())).ToList();
        senders.ForEach(sender => sender.Start());
        senders.ForEach(sender => sender.Join());

        Assert.Equal(Enumerable.Range(1, 60).Select(id => (long)id), claimed.SelectMany(ids => ids).Order());
    }

    [Fact]
    public void A_chat_gets_its_posts_one_at_a_time_and_in_order()
    {
        Put(Mira, "first");
        Put(Mira, "second");

        var first = Claim();
        Assert.Equal(Text("first"), first!.Payload);
        Assert.Null(Claim());

        studio.File.Write(session => session.Post.Sent(first.Id, Morning));
        Assert.Equal(Text("second"), Claim()!.Payload);
    }

    [Fact]
    public void No_chat_waits_for_another()
    {
        Put(Mira, "first");
        Put(Mira, "second");
        Put(Pia, "third");

        Claim();

        Assert.Equal(Text("third"), Claim()!.Payload);
    }

    [Fact]
    public void Replies_go_before_pings_and_pings_before_digests()
    {
        Put(1, "digest", Urgency.Digest);
        Put(2, "ping", Urgency.Ping);
        Put(3, "reply");

        Assert.Equal(Text("reply"), Claim()!.Payload);
        Assert.Equal(Text("ping"), Claim()!.Payload);
        Assert.Equal(Text("digest"), Claim()!.Payload);
    }

    [Fact]
    public void What_did_not_go_goes_no_sooner_than_it_may_and_its_chat_rests_until_then()
    {
        Put(Mira, "first", Urgency.Ping);
        var first = Claim();
        studio.File.Write(session => session.Post.Again(first!.Id, Morning.AddSeconds(30), "429"));
        Put(Mira, "second");   // a reply, more urgent, and yet the chat rests

        Assert.Null(Claim(Morning.AddSeconds(29.999)));
        Assert.Equal(Morning.AddSeconds(30), studio.File.Write(session => session.Post.NextTryAt()));
        Assert.Equal(Text("second"), Claim(Morning.AddSeconds(30))!.Payload);
    }

    [Fact]
    public void A_second_try_says_that_it_is_one_and_only_an_unclear_one_may_have_arrived()
    {
        Put(Mira, "a");
        studio.File.Write(session => session.Post.Again(Claim(session)!.Id, Morning, "502"));
        var second = Claim();
        Assert.Equal((2, false), (second!.Tries, second.MaybeSent));

        studio.File.Write(session => session.Post.Again(second.Id, Morning, "timed out", maybeSent: true));
        var third = Claim();
        Assert.Equal((3, true), (third!.Tries, third.MaybeSent));

        studio.File.Write(session => session.Post.Again(third.Id, Morning, "502"));
        Assert.True(Claim()!.MaybeSent);   // what may have arrived once may have arrived for good
    }

    [Fact]
    public void At_start_every_claim_is_free_again_and_may_have_arrived()
    {
        Put(Mira, "a");
        Put(Pia, "b");
        Claim();

        studio.Reopen();

        Assert.Equal(1, studio.File.Write(session => session.Post.FreeAll()));
        var again = Claim();
        Assert.Equal((Text("a"), true), (again!.Payload, again.MaybeSent));
        Assert.False(Claim()!.MaybeSent);
    }

    [Fact]
    public void What_is_parked_is_not_tried_again_and_lets_the_next_one_pass()
    {
        Put(Mira, "first");
        Put(Mira, "second");

        studio.File.Write(session => session.Post.Park(Claim(session)!.Id, Morning, "too odd"));

        Assert.Equal(Text("second"), Claim()!.Payload);
    }

    [Fact]
    public void A_chat_that_is_gone_has_all_its_posts_parked_and_no_other_has()
    {
        Put(Mira, "first");
        Put(Mira, "second");
        Put(Pia, "third");

        Assert.Equal(2, studio.File.Write(session => session.Post.ParkChat(Mira, Morning, "blocked")));

        Assert.Equal(Text("third"), Claim()!.Payload);
        Assert.Null(Claim());
    }

    [Fact]
    public void What_must_be_said_once_is_put_once()
    {
        Assert.True(Put(Mira, "the week", Urgency.Digest, "week-48"));
        Assert.False(Put(Mira, "the week", Urgency.Digest, "week-48"));
        Assert.True(Put(Mira, "the week", Urgency.Digest, "week-49"));
    }

    [Fact]
    public void Chats_that_the_pace_leaves_alone_are_passed_over()
    {
        Put(Mira, "first");
        Put(Pia, "second");

        Assert.Equal(Pia, studio.File.Write(session => session.Post.Claim(Morning, Mira))!.ChatId);
        Assert.Null(studio.File.Write(session => session.Post.Claim(Morning, Mira, Pia)));
    }

    [Fact]
    public void Only_what_was_claimed_can_be_sent_put_off_or_parked()
    {
        Put(Mira, "a");

        Refused(session => session.Post.Sent(1, Morning));
        Refused(session => session.Post.Again(1, Morning, "?"));
        Refused(session => session.Post.Park(1, Morning, "?"));
        Assert.NotNull(Claim());

        void Refused(Action<StudioSession> work) =>
            Assert.Throws<InvalidOperationException>(() => studio.File.Write(work));
    }

    [Fact]
    public void What_throws_has_posted_nothing()
    {
        Assert.Throws<SqliteException>(() => studio.File.Write(session =>
        {
            session.Post.Put(Mira, Text("a"), Urgency.Reply, Morning);
            session.Post.Put(Mira, "no json", Urgency.Reply, Morning);
        }));

        Assert.Null(Claim());
    }

    [Fact]
    public void What_was_sent_is_kept_for_eight_days_and_what_waits_for_ever()
    {
        Put(Mira, "first");
        Put(Mira, "second");
        studio.File.Write(session => session.Post.Sent(Claim(session)!.Id, Morning, messageId: 77));

        Assert.Equal(0, studio.File.Write(session => session.Post.Prune(Morning.AddDays(8))));
        Assert.Equal(1, studio.File.Write(session => session.Post.Prune(Morning.AddDays(9))));
        Assert.Equal(Text("second"), Claim()!.Payload);
    }

    [Fact]
    public void Claiming_reads_no_post_that_was_sent()
    {
        using var connection = new SqliteConnection($"Data Source={studio.Path};Pooling=False");

        var plan = connection.Query<(long, long, long, string Step)>(
            "explain query plan " + Outbox.ClaimHeads, new { now = 0, most = 1, resting = "[]" }).Select(row => row.Step).ToList();

        Assert.Contains(plan, step => step.Contains("post_waiting", StringComparison.Ordinal));

        // What is gone through whole: the chats with post waiting, and the few that rest.
        Assert.All(plan.Where(step => step.StartsWith("SCAN", StringComparison.Ordinal)), step =>
            Assert.Matches("^SCAN (chats|json_each)", step));
    }

    private static string Text(string words) => $$"""{"text":"{{words}}"}""";

    private bool Put(long chat, string words, Urgency urgency = Urgency.Reply, string? once = null) =>
        studio.File.Write(session => session.Post.Put(chat, Text(words), urgency, Morning, once));

    private Records.Post.Post? Claim() => Claim(Morning);

    private Records.Post.Post? Claim(DateTimeOffset now) => studio.File.Write(session => session.Post.Claim(now));

    private static Records.Post.Post? Claim(StudioSession session) => session.Post.Claim(Morning);

    private long[] ClaimAll()
    {
        var ids = new List<long>();
        while (Claim() is { } post)
        {
            ids.Add(post.Id);
        }

        return [.. ids];
    }
}
