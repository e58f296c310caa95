using Microsoft.Extensions.Logging.Abstractions;
using Microsoft.Extensions.Time.Testing;
using StudioBot.Host.Sending;
using StudioBot.Host.Telegram;
using StudioBot.Host.Tests.Support;
using StudioBot.Host.Turns;
using StudioBot.Records;
using StudioBot.Records.Backups;
using StudioBot.Records.Post;

namespace StudioBot.Host.Tests.Sending;

public sealed class SenderTests : IDisposable
{
    private const long Nora = 7;
    private const long Pia = 8;

    private readonly FakeTimeProvider clock = new(new DateTimeOffset(2026, 11, 25, 9, 0, 0, TimeSpan.Zero));
    private readonly TempFolder folder = new();
    private readonly StudioFile file;
    private readonly RecordingWire wire;
    private readonly Bell bell;

    private BackupLetter Backups => new(BackupFolder.Of(folder.StudioPath), NullLogger<BackupLetter>.Instance);

    public SenderTests()
    {
        file = StudioFile.Open(folder.StudioPath);
        wire = new RecordingWire(clock);
        bell = new Bell(clock);
    }

    [Fact]
    public async Task Posts_of_one_chat_arrive_in_order()
    {
        Put(Nora, "one", "two", "three");
        await Sending(() => wire.All.Count == 3);
        Assert.Equal(["one", "two", "three"], wire.All.Select(sent => sent.Letter.Plain));
    }

    [Fact]
    public async Task A_chat_that_is_told_to_wait_holds_up_nobody_else()
    {
        wire.Script(Nora, new Delivery.Again(TimeSpan.FromSeconds(90), "too many"));
        Put(Nora, "one", "two");
        Put(Pia, "hers");
        var began = clock.GetUtcNow();
        await Sending(() => wire.All.Count == 4);
        var hers = Assert.Single(wire.All, sent => sent.Chat == Pia);
        Assert.True(hers.At - began < TimeSpan.FromSeconds(2));
        var again = wire.All.Where(sent => sent.Chat == Nora).ToList();
        Assert.Equal(["one", "one", "two"], again.Select(sent => sent.Letter.Plain));
        Assert.True(again[1].At - again[0].At >= TimeSpan.FromSeconds(90));
    }

    [Fact]
    public async Task A_lost_answer_is_sent_again_and_only_then_says_that_it_may_be_a_repeat()
    {
        wire.Script(
            Nora, new Delivery.Again(null, "refused"), new Delivery.Unclear("cut"), new Delivery.Unclear("cut"));
        Put(Nora, "one");
        await Sending(() => wire.All.Count == 4);
        Assert.Equal([false, false, true, true], wire.All.Select(sent =>
            sent.Letter.Plain.Contains("twice", StringComparison.Ordinal)));
        Assert.All(wire.All.Skip(1).Zip(wire.All), pair =>
            Assert.True(pair.First.At - pair.Second.At >= TimeSpan.FromSeconds(1)));
    }

    [Fact]
    public async Task A_chat_that_is_gone_gets_no_more_tries()
    {
        wire.Script(Nora, new Delivery.Gone("blocked"));
        Put(Nora, "one", "two");
        Put(Pia, "hers");
        await Sending(() => wire.All.Count == 2);
        Assert.Null(file.Write(session => session.Post.Claim(clock.GetUtcNow() + TimeSpan.FromDays(2))));
    }

    [Fact]
    public async Task A_message_that_is_refused_is_parked_and_the_next_one_goes()
    {
        wire.Script(Nora, new Delivery.Refused("our mistake"));
        Put(Nora, "one", "two");
        await Sending(() => wire.All.Count == 2);
        Assert.Equal("two", wire.All[1].Letter.Plain);
    }

    [Fact]
    public async Task After_a_day_of_trying_it_is_parked()
    {
        wire.Script(Nora, [.. Enumerable.Repeat(new Delivery.Again(TimeSpan.FromHours(5), "down"), 20)]);
        Put(Nora, "one");
        await Sending(
            () => wire.All.Count == 6 && file.Write(session => session.Post.NextTryAt()) is null,
            TimeSpan.FromMinutes(10));
        Assert.Equal(6, wire.All.Count);
    }

    [Fact]
    public async Task What_was_on_the_wire_when_the_program_died_goes_again_and_says_so()
    {
        Put(Nora, "one");
        Assert.NotNull(file.Write(session => session.Post.Claim(clock.GetUtcNow())));
        await Sending(() => wire.All.Count == 1);
        Assert.Contains("twice", wire.All[0].Letter.Plain, StringComparison.Ordinal);
    }

    [Fact]
    public async Task One_chat_stuck_on_the_wire_holds_up_nobody_else()
    {
        var held = wire.Held[Nora] = new TaskCompletionSource();
        Put(Nora, "one", "two");
        Put(Pia, "hers");
        var mine = 0;
        await Sending(() =>
        {
            if (!held.Task.IsCompleted && wire.All.Any(sent => sent.Chat == Pia))
            {
                mine = wire.All.Count(sent => sent.Chat == Nora);
                held.SetResult();
            }

            return wire.All.Count == 3;
        });
        Assert.Equal(1, mine);
    }

    [Fact]
    public async Task What_arrived_and_can_not_be_marked_does_not_go_again()
    {
        var held = wire.Held[Nora] = new TaskCompletionSource();
        Put(Nora, "one", "two");
        var began = clock.GetUtcNow();
        await Sending(() =>
        {
            if (!held.Task.IsCompleted && wire.All.Count == 1)
            {
                file.OnlyRead(true);
                held.SetResult();
            }

            if (clock.GetUtcNow() - began > Outage.Rest * 5)
            {
                file.OnlyRead(false);
            }

            return wire.All.Count == 2;
        });
        Assert.Equal(["one", "two"], wire.All.Select(sent => sent.Letter.Plain));
    }

    [Fact]
    public async Task A_new_answer_takes_the_place_of_the_one_that_was_sent()
    {
        file.Write(session =>
        {
            session.Post.Put(Nora, Letters.Text("first"), Urgency.Reply, clock.GetUtcNow(), "answer");
            var better = LetterText.Of(Letters.Saying("better") with { InPlaceOf = "answer" });
            session.Post.Put(Nora, better, Urgency.Reply, clock.GetUtcNow());
        });
        await Sending(() => wire.All.Count == 2);
        Assert.Equal([null, 1L], wire.All.Select(sent => sent.Edited));
    }

    [Fact]
    public async Task A_flood_keeps_the_pace_of_a_private_chat()
    {
        Put(Nora, [.. Enumerable.Range(1, 10).Select(number => $"{number}")]);
        await Sending(() => wire.All.Count == 10);
        Assert.True(wire.All[9].At - wire.All[0].At >= TimeSpan.FromSeconds(7));
    }

    [Fact]
    public async Task A_wished_backup_goes_out_as_a_file_and_after_a_lost_answer_as_the_same_one()
    {
        wire.Script(Nora, new Delivery.Unclear("cut"));
        Put(Nora, BackupLetter.Wished);
        await Sending(() => wire.All.Count == 2);
        var made = Assert.Single(BackupFolder.Of(folder.StudioPath).All());
        var bytes = File.ReadAllBytes(Path.Combine(folder.Path, "backups", made.Name));
        Assert.All(wire.All, sent => Assert.Equal(made.Name, sent.Letter.File!.Name));
        Assert.All(wire.All, sent => Assert.Equal(bytes, sent.Letter.File!.Content));
        Assert.Equal([false, true], wire.All.Select(sent => sent.Letter.Plain.Contains("twice", StringComparison.Ordinal)));
    }

    [Fact]
    public async Task A_wished_backup_waits_half_a_minute_while_another_one_is_made()
    {
        Directory.CreateDirectory(Path.Combine(folder.Path, "backups"));
        var other = FileClaim.On(Path.Combine(folder.Path, "backups", "studio"));
        Put(Nora, BackupLetter.Wished);
        Put(Pia, "hers");
        var began = clock.GetUtcNow();
        DateTimeOffset? putOffTo = null;
        await Sending(() =>
        {
            if (putOffTo is null && file.Write(session => session.Post.NextTryAt()) is { } next && next > clock.GetUtcNow())
            {
                putOffTo = next;
                Assert.Equal(Pia, Assert.Single(wire.All).Chat);
                other.Dispose();
            }

            return wire.All.Count == 2;
        });
        var sent = wire.All[1];
        Assert.NotNull(sent.Letter.File);
        Assert.DoesNotContain("twice", sent.Letter.Plain, StringComparison.Ordinal);
        Assert.True(putOffTo - began >= TimeSpan.FromSeconds(30));
        Assert.True(sent.At >= putOffTo);
    }

    public void Dispose()
    {
        file.Dispose();
        folder.Dispose();
    }

    private void Put(long chat, Letter letter) => file.Write(session =>
        session.Post.Put(chat, LetterText.Of(letter), Urgency.Reply, clock.GetUtcNow()));

    private void Put(long chat, params string[] words) => file.Write(session =>
    {
        foreach (var word in words)
        {
            session.Post.Put(chat, Letters.Text(word), Urgency.Reply, clock.GetUtcNow());
        }
    });

    private async Task Sending(Func<bool> holds, TimeSpan? step = null)
    {
        using var stop = new CancellationTokenSource();
        var sender = new Sender(
            file, wire, Backups, new Pace(clock), new Backoff(new Random(1)), bell, clock, NullLogger<Sender>.Instance);
        var steadily = new Steadily(new Backoff(new Random(1)), clock, NullLogger<Steadily>.Instance);
        var loop = steadily.Run("The sender", sender.Run, stop.Token);
        await Patience.Until(clock, step ?? TimeSpan.FromMilliseconds(100), holds);
        await Patience.End(loop, stop);
    }
}
