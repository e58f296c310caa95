using Microsoft.Extensions.Logging.Abstractions;
using Microsoft.Extensions.Time.Testing;
using StudioBot.Host.Health;
using StudioBot.Host.Sending;
using StudioBot.Host.Telegram;
using StudioBot.Host.Tests.Support;
using StudioBot.Host.Turns;
using StudioBot.Records;

namespace StudioBot.Host.Tests.Telegram;

public sealed class UpdateLoopTests : IAsyncLifetime, IDisposable
{
    private const long Nora = 7;

    private readonly FakeTimeProvider clock = new(new DateTimeOffset(2026, 11, 25, 9, 0, 0, TimeSpan.Zero));
    private readonly TempFolder folder = new();
    private readonly CancellationTokenSource stop = new();
    private StandIn standIn = null!;
    private StudioFile file = null!;
    private Task loop = Task.CompletedTask;

    public async Task InitializeAsync()
    {
        standIn = await StandIn.Start();
        file = StudioFile.Open(folder.StudioPath);
    }

    public async Task DisposeAsync()
    {
        await stop.CancelAsync();
        await Task.WhenAny(loop);
        await standIn.DisposeAsync();
    }

    public void Dispose()
    {
        file.Dispose();
        folder.Dispose();
        stop.Dispose();
    }

    [Fact]
    public async Task An_update_is_stored_before_it_is_confirmed()
    {
        standIn.Updates.Add(StandInUpdates.Message(41, Nora, 1, "help"));
        Start();
        var polls = await standIn.Until(2, call => call.Method == "getUpdates");
        Assert.False(polls[0].Body.TryGetProperty("offset", out _));
        Assert.Equal(42, polls[1].Body.GetProperty("offset").GetInt64());
        Assert.Equal(Nora, Assert.Single(Waiting()).ChatId);
    }

    [Fact]
    public async Task It_asks_for_what_it_knows_and_waits_at_the_service()
    {
        Start();
        var poll = (await standIn.Until(1, call => call.Method == "getUpdates"))[0].Body;
        Assert.Equal(25, poll.GetProperty("timeout").GetInt32());
        Assert.Equal(100, poll.GetProperty("limit").GetInt32());
        Assert.Equal(
            ["message", "edited_message", "callback_query", "my_chat_member"],
            poll.GetProperty("allowed_updates").EnumerateArray().Select(kind => kind.GetString()));
    }

    [Fact]
    public async Task The_same_event_under_two_numbers_is_kept_once()
    {
        standIn.Updates.Add(
            StandInUpdates.Message(41, Nora, 1, "help"),
            StandInUpdates.Message(41, Nora, 1, "help"),
            StandInUpdates.Message(44, Nora, 1, "help"));
        Start();
        await standIn.Until(2, call => call.Method == "getUpdates");
        file.Write(session => session.Inbox.Done(session.Inbox.Next().Single().Id, clock.GetUtcNow()));
        Assert.Empty(Waiting());
    }

    [Fact]
    public async Task Numbers_that_start_anew_and_lower_are_followed()
    {
        standIn.Updates.Add(StandInUpdates.Message(900_000, Nora, 1, "help"));
        Start();
        await standIn.Until(2, call => call.Method == "getUpdates");
        standIn.Script("getUpdates", Answer.Yes(new[] { StandInUpdates.Message(12, Nora + 1, 2, "help") }));
        standIn.Updates.Add(StandInUpdates.Message(900_001, Nora + 2, 3, "help"));
        var polls = await standIn.Until(4, call => call.Method == "getUpdates");
        Assert.Equal(13, polls[3].Body.GetProperty("offset").GetInt64());
        Assert.Equal(3, Waiting().Count);
    }

    [Fact]
    public async Task One_update_that_is_malformed_does_not_hold_up_the_others()
    {
        standIn.Script("getUpdates", Answer.Raw(200, "application/json", """
            {"ok":true,"result":[
              {"update_id":1,"message":{"message_id":"x","chat":7}},
              {"no_number":true},
              17,
              {"update_id":3,"message":{"message_id":5,"date":1,"chat":{"id":7,"type":"private"},"text":"help"}}]}
            """));
        Start();
        var polls = await standIn.Until(2, call => call.Method == "getUpdates");
        Assert.Equal(4, polls[1].Body.GetProperty("offset").GetInt64());
        Assert.Equal(2, Waiting().Count);
    }

    public static TheoryData<string> Faults => ["reset", "502", "bad JSON", "500"];

    [Theory]
    [MemberData(nameof(Faults))]
    public async Task A_service_that_is_down_is_asked_again_after_a_growing_wait(string how)
    {
        var fault = how switch
        {
            "reset" => Answer.Reset,
            "502" => Answer.BadGateway,
            "bad JSON" => Answer.BadJson,
            _ => Answer.No(500, "Internal Server Error"),
        };
        standIn.Script("getUpdates", fault, fault, fault);
        standIn.Updates.Add(StandInUpdates.Message(41, Nora, 1, "help"));
        var began = clock.GetUtcNow();
        Start();
        await Patience.Until(clock, TimeSpan.FromMilliseconds(100), () => Waiting().Count == 1);
        Assert.True(clock.GetUtcNow() - began >= TimeSpan.FromSeconds(1 + 2 + 4));
        Assert.InRange(standIn.Calls.Count(call => call.Method == "getUpdates"), 4, 5);
    }

    [Fact]
    public async Task A_second_poller_is_given_half_a_minute()
    {
        standIn.Script("getUpdates", Answer.Conflict);
        standIn.Updates.Add(StandInUpdates.Message(41, Nora, 1, "help"));
        var began = clock.GetUtcNow();
        Start();
        await Patience.Until(clock, TimeSpan.FromSeconds(1), () => Waiting().Count == 1);
        Assert.True(clock.GetUtcNow() - began >= TimeSpan.FromSeconds(30));
    }

    [Fact]
    public async Task A_refused_token_ends_it()
    {
        standIn.Script("getUpdates", Answer.Unauthorized);
        Start();
        await loop.WaitAsync(TimeSpan.FromSeconds(30));
        Assert.Single(standIn.Calls);
    }

    [Fact]
    public async Task After_a_restart_it_goes_on_where_it_was()
    {
        standIn.Updates.Add(StandInUpdates.Message(41, Nora, 1, "help"));
        Start();
        await standIn.Until(2, call => call.Method == "getUpdates");
        await stop.CancelAsync();
        await Task.WhenAny(loop);
        file.Dispose();
        file = StudioFile.Open(folder.StudioPath);
        Assert.Equal(42, file.Write(session => session.Offset.Next()));
        Assert.Single(Waiting());
    }

    private IReadOnlyList<StudioBot.Records.Post.InboxRow> Waiting() => file.Write(session => session.Inbox.Next());

    private void Start() => loop = new UpdateLoop(
        Bots.At(standIn).Polling,
        new CallGuard(TimeSpan.FromMinutes(10), TimeProvider.System),
        file,
        (store, _) => file.Write(store),
        new Pulse(clock),
        new Outage(NullLogger<Outage>.Instance),
        new RecordingWire(clock),
        new Counts(),
        new Backoff(new Random(1)),
        clock,
        NullLogger<UpdateLoop>.Instance).Run(stop.Token);
}
