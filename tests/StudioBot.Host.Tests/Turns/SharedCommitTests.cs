using Microsoft.Data.Sqlite;
using StudioBot.Host.Tests.Support;

namespace StudioBot.Host.Tests.Turns;

/// <summary>One commit of the disk carries as much as there is: what came, its answers, what goes and what has landed.
/// </summary>
public sealed class SharedCommitTests : IDisposable
{
    private readonly Desk desk = new();
    private readonly CancellationTokenSource stop = new();

    public void Dispose()
    {
        stop.Dispose();
        desk.Dispose();
    }

    [Fact]
    public async Task What_came_is_answered_and_on_its_way_once_the_commit_that_stored_it_stands()
    {
        var sender = desk.Sender(desk.Wire);
        var sending = sender.Run(stop.Token);
        desk.Loop(sender: sender).Receive(
            session => desk.Store(
                session, desk.Message(1, Desk.Nora, 1, "room 20C 58%"), desk.Message(2, Desk.Pia, 2, "room 21C 57%")),
            stop.Token);
        Assert.Equal([Desk.Nora, Desk.Pia], desk.Wire.All.Select(sent => sent.Chat));
        await Patience.End(sending, stop);
    }

    [Fact]
    public async Task What_has_landed_is_marked_by_the_next_commit_whoever_makes_it()
    {
        var sender = desk.Sender(desk.Wire);
        var sending = sender.Run(stop.Token);
        var loop = desk.Loop(sender: sender);
        loop.Receive(session => desk.Store(session, desk.Message(1, Desk.Nora, 1, "room 20C 58%")), stop.Token);
        Assert.Equal((1, 0), (Posts("sending"), Posts("sent")));
        loop.Receive(session => desk.Store(session, desk.Message(2, Desk.Pia, 2, "room 21C 57%")), stop.Token);
        Assert.Equal((1, 1), (Posts("sending"), Posts("sent")));
        await Patience.End(sending, stop);
        Assert.Equal((0, 2), (Posts("sending"), Posts("sent")));
    }

    [Fact]
    public async Task One_that_breaks_takes_back_only_itself_and_holds_back_only_its_chat()
    {
        // Nora's first, Pia's, and then Nora's second, which breaks.
        desk.Break(false, false, true);
        desk.Loop().Receive(
            session => desk.Store(
                session,
                desk.Message(1, Desk.Nora, 1, "room 20C 58%"),
                desk.Message(2, Desk.Nora, 2, "room 21C 58%"),
                desk.Message(3, Desk.Nora, 3, "room 22C 58%"),
                desk.Message(4, Desk.Pia, 4, "room 23C 58%")),
            stop.Token);
        Assert.Equal(["room 20C 58%", "room 23C 58%"], desk.Recorded.Order());
        var waits = Assert.Single(desk.File.Write(session => session.Inbox.Next()));
        Assert.Equal((Desk.Nora, 1), (waits.ChatId, waits.Tries));
        await desk.Settle();
        Assert.Equal(["room 20C 58%", "room 21C 58%", "room 22C 58%"], desk.Recorded.Except(["room 23C 58%"]));
    }

    [Fact]
    public async Task A_commit_that_fails_keeps_what_came_for_the_next_and_marks_nothing_as_sent()
    {
        var sender = desk.Sender(desk.Wire);
        var sending = sender.Run(stop.Token);
        var loop = desk.Loop(sender: sender);
        loop.Receive(session => desk.Store(session, desk.Message(1, Desk.Nora, 1, "room 20C 58%")), stop.Token);
        desk.File.OnlyRead(true);
        Assert.Throws<StudioBot.Records.UnwritableStudioException>(() => loop.Receive(
            session => desk.Store(session, desk.Message(2, Desk.Pia, 2, "room 21C 57%")), stop.Token));
        Assert.Equal((1, 0), (Posts("sending"), Posts("sent")));
        desk.File.OnlyRead(false);
        loop.Receive(session => desk.Store(session, desk.Message(2, Desk.Pia, 2, "room 21C 57%")), stop.Token);
        Assert.Equal(1, Posts("sent"));

        // The disk takes what is written again, so what waits goes.
        await Patience.Until(desk.Clock, TimeSpan.FromMilliseconds(50), () => Posts("sent") == 2);
        Assert.Equal(2, desk.Wire.All.Count);
        await Patience.End(sending, stop);
    }

    [Fact]
    public async Task A_post_that_can_t_be_read_is_parked_and_holds_up_nobody()
    {
        desk.File.Write(session =>
        {
            session.Post.Put(Desk.Pia, "{}", StudioBot.Records.Post.Urgency.Reply, desk.Now);
            session.Post.Put(Desk.Nora, "[1]", StudioBot.Records.Post.Urgency.Reply, desk.Now);
        });
        var sender = desk.Sender(desk.Wire);
        var sending = sender.Run(stop.Token);
        var loop = desk.Loop(sender: sender);
        loop.Receive(session => desk.Store(session, desk.Message(1, Desk.Nora, 1, "room 20C 58%")), stop.Token);
        await Patience.Until(desk.Clock, TimeSpan.FromMilliseconds(50), () => Posts("parked") == 2 && Posts("sent") >= 1);
        Assert.Contains(desk.Wire.All, sent => sent.Letter.Plain.Contains("20", StringComparison.Ordinal));
        await Patience.End(sending, stop);
    }

    [Fact]
    public async Task A_message_that_comes_as_the_clock_is_set_forward_gives_nothing_up()
    {
        desk.Wire.Script(Desk.Pia, new Host.Sending.Delivery.Again(TimeSpan.FromSeconds(90), "too many"));
        var wall = new WallClock(desk.Clock);
        var sender = Senders.Of(desk.File, desk.Wire, wall);
        var sending = sender.Run(stop.Token);
        var loop = desk.Loop(sender: sender);
        loop.Receive(session => desk.Store(session, desk.Message(1, Desk.Pia, 1, "room 20C 58%")), stop.Token);
        wall.Set(TimeSpan.FromHours(48));
        loop.Receive(session => desk.Store(session, desk.Message(2, Desk.Nora, 2, "room 21C 57%")), stop.Token);
        Assert.Equal(0, Posts("parked"));
        Assert.Equal(1, Posts("waiting"));
        await Patience.End(sending, stop);
    }

    private int Posts(string state)
    {
        using var books = new SqliteConnection($"Data Source={desk.Path};Pooling=False");
        books.Open();
        using var command = books.CreateCommand();
        command.CommandText = "select count(*) from post where state = $state";
        command.Parameters.AddWithValue("$state", state);
        return Convert.ToInt32(command.ExecuteScalar(), null);
    }
}
