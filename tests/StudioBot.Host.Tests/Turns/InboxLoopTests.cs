using System.Text.Json;
using System.Text.Json.Nodes;
using Microsoft.Extensions.Logging.Abstractions;
using Microsoft.Extensions.Time.Testing;
using StudioBot.Chat.Replies;
using StudioBot.Host.Sending;
using StudioBot.Host.Telegram;
using StudioBot.Host.Tests.Support;
using StudioBot.Host.Turns;
using StudioBot.Records;
using StudioBot.Records.Post;

namespace StudioBot.Host.Tests.Turns;

public sealed class InboxLoopTests : IDisposable
{
    private const long Us = 123456789;
    private const long Nora = 7;
    private const long Pia = 8;

    private readonly FakeTimeProvider clock = new(new DateTimeOffset(2026, 11, 25, 9, 0, 0, TimeSpan.Zero));
    private readonly TempFolder folder = new();
    private readonly List<string> answered = [];
    private readonly List<Letter> carried = [];
    private readonly RecordingWire wire;
    private StudioFile file;
    private Func<ChatMessage, Answered?> answer;

    public InboxLoopTests()
    {
        file = StudioFile.Open(folder.StudioPath);
        wire = new RecordingWire(clock);
        answer = message => Line(message.Words);
    }

    [Fact]
    public async Task Each_message_gets_its_answer_in_its_chat_s_order()
    {
        Store(StandInUpdates.Message(1, Nora, 1, "one"), StandInUpdates.Message(2, Nora, 2, "two"));
        await Answering();
        Assert.Equal(["Re: one", "Re: two"], Posted().Select(letter => letter.Plain));
    }

    [Fact]
    public async Task Stored_and_killed_before_the_answer_it_is_answered_once_after_the_restart()
    {
        Store(StandInUpdates.Message(1, Nora, 1, "one"));
        Reopen();
        Store(StandInUpdates.Message(1, Nora, 1, "one"), StandInUpdates.Message(9, Nora, 1, "one"));
        await Answering();
        Reopen();
        await Answering();
        Assert.Equal(["one"], answered);
        Assert.Equal("Re: one", Assert.Single(Posted()).Plain);
    }

    [Fact]
    public async Task What_breaks_is_tried_three_times_apologised_for_once_and_parked()
    {
        answer = message => message.Words == "poison"
            ? throw new InvalidOperationException("ours")
            : Line(message.Words);
        Store(
            StandInUpdates.Message(1, Nora, 1, "poison"),
            StandInUpdates.Message(2, Nora, 2, "after"),
            StandInUpdates.Message(3, Pia, 3, "hers"));
        await Answering();
        Assert.Equal(3, answered.Count(words => words == "poison"));
        var letters = Posted();
        Assert.Matches("^That broke here, not at your end. Nothing recorded. Mark [A-Z2-9]{3}.$", Assert.Single(
            letters, letter => !letter.Plain.StartsWith("Re:", StringComparison.Ordinal)).Plain);
        Assert.Equal(["Re: after", "Re: hers"], letters.Select(letter => letter.Plain)
            .Where(words => words.StartsWith("Re:", StringComparison.Ordinal)).Order());
        Assert.Single(file.Write(session => session.Inbox.AllParked()));
    }

    [Fact]
    public async Task An_update_that_can_t_be_read_is_parked_too()
    {
        Store(new JsonObject { ["update_id"] = 1, ["message"] = new JsonObject { ["message_id"] = "x" } });
        await Answering();
        Assert.Single(file.Write(session => session.Inbox.AllParked()));
        Assert.Empty(Posted());
    }

    [Fact]
    public async Task Silence_is_settled_without_a_word()
    {
        answer = _ => null;
        Store(StandInUpdates.Message(1, StandInUpdates.GroupChat, 1, "lunch?"));
        await Answering();
        Assert.Empty(Posted());
    }

    [Fact]
    public async Task In_a_group_the_answer_points_at_its_question()
    {
        Store(
            StandInUpdates.Message(1, StandInUpdates.GroupChat, 31, "/help"),
            StandInUpdates.Message(2, Nora, 5, "help"));
        await Answering();
        Assert.Equal([31L, null], Posted().Select(letter => letter.ReplyTo));
    }

    [Fact]
    public async Task A_corrected_question_is_answered_in_the_place_of_its_first_answer()
    {
        Store(StandInUpdates.Message(1, Nora, 1, "one"), StandInUpdates.Edit(2, Nora, 1, "two", 10));
        await Answering();
        var letters = Posted();
        Assert.Equal(["Re: one", "Re: two"], letters.Select(letter => letter.Plain));
        Assert.Equal([null, Posting.KeyOf(Nora, 1)], letters.Select(letter => letter.InPlaceOf));
    }

    [Theory]
    [InlineData("record", "ask")]
    [InlineData("ask", "record")]
    [InlineData("", "ask")]       // never answered: nothing stands there to be replaced
    public async Task Any_other_correction_changes_nothing(string first, string then)
    {
        answer = message => message.Words switch
        {
            "" => null,
            "record" => new Answered(new Reply(new Block.Line("Recorded")), ToQuestion: false),
            _ => Line(message.Words),
        };
        Store(StandInUpdates.Message(1, Nora, 1, first));
        await Answering();
        var before = Posted().Count;
        Store(StandInUpdates.Edit(2, Nora, 1, then, 10));
        await Answering();
        Assert.Equal(first.Length == 0 ? 0 : 1, before);
        Assert.Empty(Posted());
    }

    [Fact]
    public async Task A_press_says_its_line_as_often_as_it_is_pressed()
    {
        Store(StandInUpdates.Press(1, Nora, 3, "p1", "help"), StandInUpdates.Press(2, Nora, 3, "p2", "help"));
        await Answering();
        Assert.Equal(["Re: help", "Re: help"], Posted().Select(letter => letter.Plain));
        Assert.Equal([null, null], wire.Presses);
    }

    [Fact]
    public async Task A_long_line_comes_back_by_its_key_and_only_for_whom_it_was_made()
    {
        var line = "amounts 30cm panel bloom 6 colours and one more long word after the other";
        answer = message => message.Words == "ask"
            ? new Answered(new Reply([new Block.Line("Here.")], [new Button("All", line)]), ToQuestion: true)
            : Line(message.Words);
        Store(StandInUpdates.Message(1, 77, 1, "ask"));
        await Answering();
        var data = Assert.Single(Posted()).Keys[0][0].Data;
        Store(StandInUpdates.Press(2, 77, 3, "p1", data), StandInUpdates.Press(3, 77, 3, "p2", data));
        await Answering();
        Assert.Contains("Re: " + line, Posted(all: true).Select(letter => letter.Plain));
        Assert.Equal([null, "This button was pressed before."], wire.Presses);
    }

    [Theory]
    [InlineData("~AAAAAAAAAAAAAAAA")]
    [InlineData("~")]
    [InlineData("~'; drop table press; --")]
    public async Task A_forged_key_does_nothing(string data)
    {
        Store(StandInUpdates.Press(1, Nora, 3, "p1", data));
        await Answering();
        Assert.Empty(answered);
        Assert.Equal(["This button is too old. Send the message again."], wire.Presses);
    }

    public void Dispose()
    {
        file.Dispose();
        folder.Dispose();
    }

    private static Answered Line(string words) => new(new Reply(new Block.Line("Re: " + words)), ToQuestion: true);

    private void Reopen()
    {
        file.Dispose();
        file = StudioFile.Open(folder.StudioPath);
    }

    private void Store(params JsonObject[] updates) => file.Write(session =>
    {
        foreach (var update in updates)
        {
            var received = ReceivedUpdate.Of(JsonDocument.Parse(update.ToJsonString()).RootElement)!;
            session.Inbox.Store(
                new Incoming(received.UpdateId, received.Chat, received.Kind, received.Raw)
                {
                    MessageId = received.Message,
                    PressId = received.Press,
                },
                clock.GetUtcNow());
        }
    });

    private async Task Answering()
    {
        using var stop = new CancellationTokenSource();
        var loop = new InboxLoop(
            file,
            Us,
            message =>
            {
                answered.Add(message.Words);
                return answer(message);
            },
            wire,
            new Bell(clock),
            new Bell(clock),
            clock,
            NullLogger<InboxLoop>.Instance).Run(stop.Token);
        await Patience.Until(
            clock, TimeSpan.FromMilliseconds(100), () => file.Write(session => session.Inbox.Next()).Count == 0);
        await Patience.End(loop, stop);
    }

    // Claims whatever waits, as a sender would.
    private List<Letter> Posted(bool all = false)
    {
        var fresh = new List<Letter>();
        while (file.Write(session => session.Post.Claim(clock.GetUtcNow())) is { } post)
        {
            fresh.Add(LetterText.Read(post.Payload));
            file.Write(session => session.Post.Sent(post.Id, clock.GetUtcNow(), post.Id));
        }

        carried.AddRange(fresh);
        return all ? carried : fresh;
    }
}
