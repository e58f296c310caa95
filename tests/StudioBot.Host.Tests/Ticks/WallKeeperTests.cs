using Microsoft.Extensions.Time.Testing;
using StudioBot.Chat;
using StudioBot.Host.Sending;
using StudioBot.Host.Telegram;
using StudioBot.Host.Tests.Support;
using StudioBot.Host.Ticks;
using StudioBot.Records;

namespace StudioBot.Host.Tests.Ticks;

/// <summary>One message in the group, pinned once and changed in place: through the books, the post and who carries it.</summary>
public sealed class WallKeeperTests : IDisposable
{
    private const long Nora = 7;
    private const long Group = -1001;
    private const long Supergroup = -1009;
    private const long Other = -1002;
    private const string Gone = "This wall is kept no more. Say “wall” for a new one.";

    private readonly FakeTimeProvider clock = new(new DateTimeOffset(2026, 11, 25, 9, 0, 0, TimeSpan.Zero));
    private readonly StudioFile file = StudioFile.OpenInMemory();
    private readonly RecordingWire wire;
    private WallKeeper keeper;
    private int messages;

    public WallKeeperTests()
    {
        Studios.Found(file, clock.GetUtcNow().AddDays(-60), (Nora, "Nora"));
        wire = new RecordingWire(clock);
        keeper = new WallKeeper(file, Studios.Practice);
    }

    public void Dispose() => file.Dispose();

    [Fact]
    public async Task It_is_one_message_that_is_pinned_without_a_sound()
    {
        Say("wall");
        await Looking(3);

        var sent = Assert.Single(wire.All);
        Assert.Equal((Group, null), (sent.Chat, sent.Edited));
        Assert.StartsWith("How it stands in the studio", sent.Letter.Plain, StringComparison.Ordinal);
        Assert.Equal([(Group, 1, true)], wire.Pins);
    }

    [Fact]
    public async Task What_changes_changes_in_that_message()
    {
        Say("wall");
        await Looking(3);
        Say("pour 30cm panel bloom 6 colours");
        await Looking(3);

        Assert.Equal([null, 1], wire.All.Select(sent => sent.Edited));
        Assert.Contains("Drying, 1: 1 ", wire.All[1].Letter.Plain, StringComparison.Ordinal);
        Assert.Contains("Changed Wed 25 Nov", wire.All[1].Letter.Plain, StringComparison.Ordinal);
        Assert.Single(wire.Pins);
    }

    [Fact]
    public async Task As_long_as_nothing_changes_nothing_is_sent()
    {
        Say("wall");
        await Looking(3);
        Say("room 20C 50%");                        // is not on it
        for (var look = 0; look < 720; look++)      // an hour of looks
        {
            clock.Advance(Schedule.EveryFewSeconds);
            Assert.False(keeper.Look(clock.GetUtcNow()));
        }
    }

    [Fact]
    public async Task However_much_is_recorded_one_change_is_on_the_way_at_a_time()
    {
        Say("wall");
        await Looking(3);
        foreach (var _ in Enumerable.Range(0, 20))
        {
            Say("pour 30cm panel bloom 6 colours");
            keeper.Look(clock.GetUtcNow());
        }

        await Looking(3);
        Assert.Equal(3, wire.All.Count);            // the first, that of the first piece, that of the twentieth
        Assert.Contains("Drying, 20: 1 ", wire.All[2].Letter.Plain, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_message_that_was_deleted_comes_anew_and_is_pinned()
    {
        Say("wall");
        await Looking(3);
        wire.Script(Group, new Delivery.Sent(40));  // in place of what is gone, a new one was sent
        Say("pour 30cm panel bloom 6 colours");
        await Looking(3);
        Say("pour 30cm panel bloom 6 colours");
        await Looking(3);

        Assert.Equal([null, 1, 40], wire.All.Select(sent => sent.Edited));
        Assert.Equal([(Group, 1, true), (Group, 40, true)], wire.Pins);
    }

    [Fact]
    public async Task A_group_that_moved_gets_a_new_one()
    {
        Say("wall");
        await Looking(3);
        file.Write(session => Moving.Follow(session, Group, Supergroup, clock.GetUtcNow()));
        await Looking(3);

        Assert.Equal([(Group, null), (Supergroup, null)], wire.All.Select(sent => (sent.Chat, sent.Edited)));
        Assert.Equal([(Group, 1, true), (Supergroup, 2, true)], wire.Pins);
    }

    [Fact]
    public async Task A_group_that_moved_while_a_change_was_on_the_way_gets_one_new_one_all_the_same()
    {
        Say("wall");
        await Looking(3);
        Say("pour 30cm panel bloom 6 colours");
        keeper.Look(clock.GetUtcNow());             // put, and not carried yet
        file.Write(session => Moving.Follow(session, Group, Supergroup, clock.GetUtcNow()));
        keeper.Look(clock.GetUtcNow());
        await Looking(4);

        Assert.Equal([(Supergroup, (long?)null)], wire.All.Skip(1).Select(sent => (sent.Chat, sent.Edited)));
        Assert.Equal((Supergroup, 2, true), wire.Pins[^1]);
    }

    [Fact]
    public async Task However_long_nothing_goes_out_one_wall_waits()
    {
        Say("wall");
        for (var hour = 0; hour < 6; hour++)
        {
            keeper.Look(clock.GetUtcNow());
            clock.Advance(TimeSpan.FromHours(1));
            Say("pour 30cm panel bloom 6 colours");
        }

        await Looking(4);
        Assert.Equal([null, 1], wire.All.Select(sent => sent.Edited));
    }

    [Fact]
    public async Task Taken_down_before_it_arrived_it_says_so_once_it_has()
    {
        Say("wall");
        keeper.Look(clock.GetUtcNow());
        Say("wall off");
        await Looking(3);

        Assert.Equal((1, Gone), (wire.All[^1].Edited, wire.All[^1].Letter.Plain));
        Assert.Equal(2, wire.All.Count);
    }

    [Fact]
    public async Task The_studio_s_new_group_gets_it()
    {
        Say("wall");
        await Looking(3);
        Say("studio group here", Other);
        await Looking(4);

        Assert.Contains(wire.All, sent => (sent.Edited, sent.Letter.Plain) == (1, Gone));
        Assert.Equal(Other, wire.All[^1].Chat);
    }

    [Fact]
    public async Task Where_it_may_not_pin_that_is_said_once_and_the_wall_is_kept_all_the_same()
    {
        wire.MayPin = false;
        Say("wall");
        await Looking(3);
        Say("wall");
        await Looking(3);
        Say("pour 30cm panel bloom 6 colours");
        await Looking(3);

        Assert.Single(wire.All, sent => sent.Letter.Plain.StartsWith("I may not pin here", StringComparison.Ordinal));
        Assert.Contains("Drying, 1", wire.All[^1].Letter.Plain, StringComparison.Ordinal);
        Assert.NotNull(wire.All[^1].Edited);
    }

    [Theory]
    [InlineData("wall off")]
    [InlineData("undo")]
    public async Task Taken_down_it_says_so_and_its_pin_goes(string said)
    {
        Say("wall");
        await Looking(3);
        Say(said);
        await Looking(3);

        Assert.Equal([(Group, 1, true), (Group, 1, false)], wire.Pins);
        Assert.Equal((1, Gone), (wire.All[^1].Edited, wire.All[^1].Letter.Plain));
        Say("pour 30cm panel bloom 6 colours");
        await Looking(3);
        Assert.Equal(2, wire.All.Count);
    }

    [Fact]
    public async Task Asked_for_again_it_is_a_new_message_at_the_end_of_the_talk()
    {
        Say("wall");
        await Looking(3);
        clock.Advance(TimeSpan.FromDays(1));
        Say("wall");
        await Looking(3);

        Assert.Equal([(Group, 1, true), (Group, 1, false), (Group, 2, true)], wire.Pins);
        Assert.Contains(wire.All, sent => (sent.Edited, sent.Letter.Plain) == (1, Gone));
    }

    [Fact]
    public async Task A_new_process_sends_nothing_again()
    {
        Say("wall");
        await Looking(3);
        keeper = new WallKeeper(file, Studios.Practice);
        await Looking(3);
        Assert.Single(wire.All);
        Assert.Single(wire.Pins);
    }

    [Fact]
    public async Task In_private_it_is_the_studio_s_group_that_gets_it()
    {
        Say("room 20C 50%");                        // the first group a member was heard in
        Say("wall", Nora);
        await Looking(3);
        Assert.Equal(Group, Assert.Single(wire.All).Chat);
    }

    // The service looks every few seconds, and carries what it put.
    private async Task Looking(int times)
    {
        for (var look = 0; look < times; look++)
        {
            clock.Advance(Schedule.EveryFewSeconds);
            keeper.Look(clock.GetUtcNow());
            using var stop = new CancellationTokenSource();
            var loop = Senders.Of(file, wire, clock).Run(stop.Token);
            await Patience.Until(clock, TimeSpan.FromMilliseconds(100), () => file.Write(session => session.Post.NextTryAt()) is null);
            await Patience.End(loop, stop);
        }
    }

    private void Say(string words, long chat = Group)
    {
        clock.Advance(TimeSpan.FromMinutes(2));     // said again at once, it would be asked about
        var kind = chat < 0 ? ChatKind.Group : ChatKind.Private;
        var message = new ChatMessage(chat, kind, ++messages, Nora, "Nora", kind == ChatKind.Group ? $"/{words}" : words, clock.GetUtcNow());
        var outcome = file.Write(session => Studios.Answering().To(message, session));
        Assert.True(outcome?.Recorded, $"{words}: {outcome?.Reply.PlainText}");
    }
}
