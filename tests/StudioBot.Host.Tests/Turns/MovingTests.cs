using System.Text.Json.Nodes;
using Microsoft.Extensions.Logging.Abstractions;
using StudioBot.Host.Sending;
using StudioBot.Host.Telegram;
using StudioBot.Host.Tests.Support;
using StudioBot.Records.Reminders;

namespace StudioBot.Host.Tests.Turns;

/// <summary>The studio's group becomes a supergroup, which has another number.</summary>
public sealed class MovingTests : IAsyncLifetime, IDisposable
{
    private const long Old = -5;
    private const long New = -1005;

    private readonly Desk desk = new();
    private StandIn standIn = null!;

    public async Task InitializeAsync() => standIn = await StandIn.Start();

    public async Task DisposeAsync() => await standIn.DisposeAsync();

    public void Dispose() => desk.Dispose();

    public static TheoryData<string> Ways => ["refused", "told in the old chat", "told in the new chat"];

    [Theory]
    [MemberData(nameof(Ways))]
    public async Task Whoever_tells_it_the_group_follows_everywhere_and_what_waits_arrives_once(string way)
    {
        await Opened();
        standIn.Script(call => call.Chat == Old, [.. Enumerable.Repeat(Answer.MovedTo(New), 20)]);
        if (way != "refused")
        {
            await desk.Settle(Told(way, 50));
        }

        await Sent(3);
        desk.Reopen();
        await Sent(3);

        var arrived = standIn.Sent.Where(call => call.Chat == New).Select(call => call.Text!.Split('\n')[0]).ToList();
        Assert.Equal(3, arrived.Count);
        Assert.Equal(arrived.Distinct(), arrived);
        Assert.Equal(way == "refused" ? 1 : 0, standIn.Sent.Count(call => call.Chat == Old));
        Assert.All(standIn.Sent.Where(call => call.Chat == New), call =>
            Assert.False(call.Body.TryGetProperty("reply_parameters", out _)));
        Assert.Equal("-1005", desk.File.Read(view => view.Studio.Setting("group")));
        Assert.All(desk.File.Read(view => view.Reminders.About("group test")), one => Assert.Equal(New, one.What.ChatId));
    }

    [Theory]
    [InlineData(Old)]   // the press still names the chat in which the button stood
    [InlineData(New)]
    public async Task A_button_of_the_old_group_is_good_once_in_the_new_one(long pressedIn)
    {
        await Opened();
        var undo = desk.Posted()[0].Keys[0][0].Data;
        await desk.Settle(Told("told in the old chat", 50));
        await desk.Settle(
            StandInUpdates.Press(51, pressedIn, 3, "p1", undo, Desk.Nora),
            StandInUpdates.Press(52, pressedIn, 3, "p2", undo, Desk.Nora));
        Assert.DoesNotContain("/room 20C 58%", desk.Recorded);
        Assert.Equal([null, "This button was pressed before."], desk.Wire.Presses);
    }

    [Fact]
    public async Task What_waits_in_the_inbox_is_answered_in_the_new_one_and_takes_no_other_message_s_place()
    {
        await Opened();
        desk.Posted();
        await desk.Settle(Told("told in the new chat", 50));
        await desk.Settle(
            desk.Message(51, Old, 9, "/ratio 1:1 90 ml", Desk.Pia), desk.Message(52, New, 9, "/ratio 1:1 70 ml", Desk.Pia));
        var posts = Claimed();
        Assert.Equal([New, New], posts.Select(post => post.Chat));
        Assert.Contains("90 ml", posts[0].Letter.Plain, StringComparison.Ordinal);
        Assert.Contains("70 ml", posts[1].Letter.Plain, StringComparison.Ordinal);
        Assert.Equal([null, 9L], posts.Select(post => post.Letter.ReplyTo));
    }

    [Fact]
    public async Task A_correction_edits_no_message_of_the_new_chat_by_the_old_one_s_number()
    {
        await Opened();
        await desk.Settle(desk.Message(40, Old, 30, "/ratio 1:1 90 ml", Desk.Pia));
        desk.Posted();
        await desk.Settle(Told("told in the old chat", 50));
        await desk.Settle(StandInUpdates.Edit(51, Old, 30, "/ratio 1:1 80 ml", 10, Desk.Pia));
        await Sent(1);
        Assert.DoesNotContain(standIn.Sent, call => call.Method == "editMessageText");
        Assert.Contains(standIn.Sent, call => call.Chat == New && call.Text!.Contains("80 ml", StringComparison.Ordinal));
    }

    [Fact]
    public async Task A_group_of_others_that_moves_changes_nothing_of_ours()
    {
        await Opened();
        await desk.Settle(new JsonObject
        {
            ["update_id"] = 50,
            ["message"] = Service(-77, 50, "migrate_to_chat_id", -1077),
        });
        Assert.Equal("-5", desk.File.Read(view => view.Studio.Setting("group")));
        Assert.Equal([Old, Old, Old], Claimed().Select(post => post.Chat));
    }

    // A record with its Undo, a question and a reminder, all in the old group; their answers wait.
    private async Task Opened()
    {
        await desk.Settle(
            desk.Message(1, Old, 1, "/room 20C 58%", Desk.Nora),
            desk.Message(2, Old, 2, "/ratio 3:1 250 ml", Desk.Pia),
            desk.Message(3, Old, 3, "/help", Desk.Pia));
        desk.File.Write(session => session.Reminders.Plan(
            new NewReminder("AskedFor", "group test", desk.Now.AddDays(3), "once") { ChatId = Old }));
        Assert.Equal("-5", desk.File.Read(view => view.Studio.Setting("group")));
    }

    private JsonObject Told(string way, int update) => new()
    {
        ["update_id"] = update,
        ["message"] = way == "told in the old chat"
            ? Service(Old, update, "migrate_to_chat_id", New)
            : Service(New, update, "migrate_from_chat_id", Old),
    };

    private JsonObject Service(long chat, int message, string field, long other)
    {
        var body = StandInUpdates.Message(1, chat, message, null, Desk.Nora, desk.Now)["message"]!.DeepClone().AsObject();
        body[field] = other;
        return body;
    }

    // Has all sent that waits, until so many arrived in the new chat.
    private async Task Sent(int count)
    {
        using var stop = new CancellationTokenSource();
        var wire = new TelegramWire(
            Bots.At(standIn).Calling, new CallGuard(TimeSpan.FromSeconds(20), TimeProvider.System),
            NullLogger<TelegramWire>.Instance);
        var sending = desk.Sender(wire).Run(stop.Token);
        await Patience.Until(desk.Clock, TimeSpan.FromMilliseconds(100), () =>
            standIn.Sent.Count(call => call.Chat == New) >= count
            && desk.File.Write(session => session.Post.NextTryAt()) is null);
        await Patience.End(sending, stop);
    }

    // All that waits, claimed and said to have been sent.
    private List<(long Chat, Letter Letter)> Claimed()
    {
        List<(long, Letter)> claimed = [];
        while (desk.File.Write(session => session.Post.Claim(desk.Now)) is { } post)
        {
            desk.File.Write(session => session.Post.Sent(post.Id, desk.Now));
            claimed.Add((post.ChatId, LetterText.Read(post.Payload)));
        }

        return claimed;
    }
}
