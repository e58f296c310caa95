using CsCheck;
using Dapper;
using Microsoft.Data.Sqlite;
using SQLitePCL;
using StudioBot.Records.Post;

namespace StudioBot.Records.Tests.Post;

public sealed class InboxTests : IDisposable
{
    private static readonly DateTimeOffset Morning = new(2026, 11, 25, 9, 0, 0, TimeSpan.Zero);

    private readonly TemporaryStudio studio = new();

    public void Dispose() => studio.Dispose();

    [Fact]
    public void What_was_stored_waits_as_it_came()
    {
        Assert.True(Store(Message(1, chat: 5, message: 10)));

        var row = Assert.Single(Next());
        Assert.Equal((5, "message", """{"n":1}"""), (row.ChatId, row.Kind, row.Raw));
        Assert.Equal((Morning, 0), (row.ReceivedAt, row.Tries));
    }

    [Fact]
    public void The_same_update_again_is_no_second_row()
    {
        Store(Message(1, chat: 5, message: 10));

        Assert.False(Store(Message(1, chat: 5, message: 10)));
        Assert.Single(Next());
    }

    [Fact]
    public void The_same_message_under_another_number_is_no_second_row()
    {
        Store(Message(900, chat: 5, message: 10));

        Assert.False(Store(Message(3, chat: 5, message: 10)));
        Assert.True(Store(Message(4, chat: 6, message: 10)));   // another chat counts its own messages
    }

    [Fact]
    public void Two_presses_on_one_message_are_two_events_and_one_press_twice_is_one()
    {
        Assert.True(Store(Pressed(1, "a")));
        Assert.True(Store(Pressed(2, "b")));
        Assert.False(Store(Pressed(3, "a")));
    }

    [Fact]
    public void Two_edits_of_one_message_are_two_events()
    {
        Assert.True(Store(new Incoming(1, 5, "edit", "{}")));
        Assert.True(Store(new Incoming(2, 5, "edit", "{}")));
    }

    [Fact]
    public void However_often_shuffled_and_renumbered_every_event_is_answered_once()
    {
        var deliveries =
            from events in Gen.Int[1, 6]
            from copies in Gen.Int[2, 100].Array[events]
            from order in Gen.Shuffle(
                Enumerable.Range(0, events).SelectMany(e => Enumerable.Repeat(e, copies[e])).ToArray())
            from renumbered in Gen.Bool.Array[order.Length]
            select (events, order, renumbered);

        deliveries.Sample(
            delivery =>
            {
                using var memory = StudioFile.OpenInMemory();
                var answered = new List<string>();
                for (var at = 0; at < delivery.order.Length; at++)
                {
                    var which = delivery.order[at];
                    var number = delivery.renumbered[at] ? 1_000_000 + at : which;
                    memory.Write(session =>
                    {
                        session.Inbox.Store(Event(number, which), Morning);
                        foreach (var row in session.Inbox.Next())
                        {
                            answered.Add(row.Raw);
                            session.Inbox.Done(row.Id, Morning);
                        }
                    });
                }

                Assert.Equal(delivery.events, answered.Count);
                Assert.Equal(delivery.events, answered.Distinct().Count());
            },
            iter: 40);
    }

    [Fact]
    public void Of_each_chat_only_the_first_row_is_next_in_order_of_arrival()
    {
        Store(Message(30, chat: 5, message: 10));
        Store(Message(20, chat: 5, message: 11));
        Store(Message(10, chat: 6, message: 7));

        Assert.Equal([5, 6], Next().Select(row => row.ChatId));
        studio.File.Write(session => session.Inbox.Done(session.Inbox.Next()[0].Id, Morning));
        Assert.Equal(["""{"n":20}""", """{"n":10}"""], Next().Select(row => row.Raw));
    }

    [Fact]
    public void A_row_is_done_only_once()
    {
        Store(Message(1, chat: 5, message: 10));
        var id = Next()[0].Id;
        studio.File.Write(session => session.Inbox.Done(id, Morning));

        Assert.Throws<InvalidOperationException>(() => studio.File.Write(session => session.Inbox.Done(id, Morning)));
    }

    [Fact]
    public void With_the_third_try_that_breaks_a_row_is_parked_and_the_next_one_has_its_turn()
    {
        Store(Message(1, chat: 5, message: 10));
        Store(Message(2, chat: 5, message: 11));
        var id = Next()[0].Id;

        Assert.Equal([false, false, true], new[] { 1, 2, 3 }.Select(_ =>
            studio.File.Write(session => session.Inbox.Broke(id, "mark K7Q", Morning))));

        Assert.Equal("""{"n":2}""", Assert.Single(Next()).Raw);
        var parked = Assert.Single(studio.File.Write(session => session.Inbox.AllParked()));
        Assert.Equal((id, 3), (parked.Id, parked.Tries));
    }

    [Fact]
    public void What_is_settled_is_known_again_for_eight_days_and_then_forgotten()
    {
        Store(Message(1, chat: 5, message: 10));
        studio.File.Write(session => session.Inbox.Done(session.Inbox.Next()[0].Id, Morning));

        Assert.Equal(0, Prune(Morning.AddDays(8)));
        Assert.False(Store(Message(1, chat: 5, message: 10)));
        Assert.Equal(1, Prune(Morning.AddDays(8).AddMilliseconds(1)));
    }

    [Fact]
    public void What_waits_is_never_forgotten()
    {
        Store(Message(1, chat: 5, message: 10));

        Assert.Equal(0, Prune(Morning.AddDays(400)));
        Assert.Single(Next());
    }

    [Theory]
    [InlineData("not json")]
    [InlineData("")]
    [InlineData("{\"text\":\"\u202E '; drop table inbox;-- \"}")]
    public void What_came_is_stored_whatever_it_is(string raw)
    {
        Assert.True(Store(new Incoming(1, 5, "message", raw)));
        Assert.Equal(raw, Assert.Single(Next()).Raw);
    }

    [Fact]
    public void The_offset_is_kept_with_what_was_fetched_and_may_go_back()
    {
        Assert.Null(studio.File.Write(session => session.Offset.Next()));

        studio.File.Write(session => session.Offset.Move(900));
        studio.Reopen();
        Assert.Equal(900, studio.File.Write(session => session.Offset.Next()));

        studio.File.Write(session => session.Offset.Move(12));
        Assert.Equal(12, studio.File.Write(session => session.Offset.Next()));
    }

    [Fact]
    public void Finding_what_is_next_reads_no_row_that_is_done()
    {
        using var connection = new SqliteConnection($"Data Source={studio.Path};Pooling=False");

        var plan = connection.Query<(long, long, long, string Step)>(
            "explain query plan " + Inbox.Heads, new { limit = 1 }).Select(row => row.Step).ToList();

        Assert.Contains(plan, step => step.Contains("INDEX inbox_waiting", StringComparison.Ordinal));
        Assert.DoesNotContain(plan, step => step.StartsWith("SCAN", StringComparison.Ordinal) && step != "SCAN chats"
            && !step.Contains("INDEX inbox_waiting", StringComparison.Ordinal));
    }

    [Fact]
    public void Finding_what_is_next_costs_the_same_however_much_waits_behind()
    {
        foreach (var message in Enumerable.Range(1, 20))
        {
            Store(Message(message, chat: message % 2, message));
        }

        var few = StepsOfNext();
        studio.File.Write(session =>
        {
            for (var message = 21; message <= 5000; message++)
            {
                session.Inbox.Store(Message(message, chat: message % 2, message), Morning);
            }
        });

        Assert.Equal([1L, 2L], Next().Select(row => row.Id));
        Assert.InRange(StepsOfNext(), 1, few);
    }

    // What SQLite's machine took for it: the same on every computer.
    private int StepsOfNext()
    {
        using var connection = new SqliteConnection($"Data Source={studio.Path};Pooling=False");
        connection.Open();
        raw.sqlite3_prepare_v2(connection.Handle, Inbox.Heads, out var statement);
        using (statement)
        {
            raw.sqlite3_bind_int(statement, raw.sqlite3_bind_parameter_index(statement, "$limit"), 100);
            while (raw.sqlite3_step(statement) == raw.SQLITE_ROW)
            {
            }

            return raw.sqlite3_stmt_status(statement, raw.SQLITE_STMTSTATUS_VM_STEP, resetFlg: 0);
        }
    }

    private bool Store(Incoming update) => studio.File.Write(session => session.Inbox.Store(update, Morning));

    private IReadOnlyList<InboxRow> Next() => studio.File.Write(session => session.Inbox.Next());

    private int Prune(DateTimeOffset now) => studio.File.Write(session => session.Inbox.Prune(now));

    private static Incoming Message(long update, long chat, long message) =>
        new(update, chat, "message", $$"""{"n":{{update}}}""") { MessageId = message };

    private static Incoming Pressed(long update, string press) =>
        new(update, 5, "press", "{}") { MessageId = 10, PressId = press };

    // Even ones are messages of two chats, odd ones presses of one button's message.
    private static Incoming Event(long update, int which) => which % 2 == 0
        ? new(update, 5 + which % 4, "message", $$"""{"e":{{which}}}""") { MessageId = which }
        : new(update, 5, "press", $$"""{"e":{{which}}}""") { MessageId = 1, PressId = $"press-{which}" };
}
