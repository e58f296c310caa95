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
    private const long Stranger = 99;

    private readonly FakeTimeProvider clock = new(new DateTimeOffset(2026, 11, 25, 9, 0, 0, TimeSpan.Zero));
    private readonly TempFolder folder = new();
    private readonly StudioFile file;
    private readonly RecordingWire wire;
    private readonly Bell bell;

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
            () => wire.All.Count == 5 && file.Write(session => session.Post.NextTryAt()) is null,
            TimeSpan.FromMinutes(10));
        Assert.Equal(5, wire.All.Count); // at 0, 5, 10, 15 and 20 h
    }

    [Fact]
    public async Task What_is_given_up_is_told_a_steward_once()
    {
        Studios.Found(file, clock.GetUtcNow().AddDays(-1), (Nora, "Nora"), (Pia, "Pia"));
        wire.Script(Pia, [.. Enumerable.Repeat(new Delivery.Again(TimeSpan.FromHours(9), "down"), 20)]);
        Put(Pia, "one", "two");
        await Sending(() => wire.All.Any(sent => sent.Chat == Nora), TimeSpan.FromMinutes(10));
        await Sending(() => file.Write(session => session.Post.NextTryAt()) is null, TimeSpan.FromMinutes(10));
        var told = Assert.Single(wire.All, sent => sent.Chat == Nora);
        Assert.Equal(
            "A message to Pia was given up, not sent for a day: “one”\nWhat was recorded stands.", told.Letter.Plain);
    }

    [Fact]
    public async Task Who_can_t_be_reached_any_more_is_told_the_other_stewards_once()
    {
        Studios.Found(file, clock.GetUtcNow().AddDays(-1), (Nora, "Nora"), (Pia, "Pia"));
        wire.Script(Pia, new Delivery.Gone("blocked"), new Delivery.Gone("blocked"));
        Put(Pia, "one");
        await Sending(() => wire.All.Any(sent => sent.Chat == Nora));
        Put(Pia, "two");
        Put(Stranger, "three");
        wire.Script(Stranger, new Delivery.Gone("blocked"));
        await Sending(() => file.Write(session => session.Post.NextTryAt()) is null && wire.All.Count == 4);
        var told = Assert.Single(wire.All, sent => sent.Chat == Nora);
        Assert.StartsWith("I can't write to Pia any more", told.Letter.Plain, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(-1)]
    [InlineData(-48)]
    [InlineData(48)]
    [InlineData(30 * 24)]
    public async Task A_clock_that_is_set_makes_nothing_wait_longer_or_shorter(int hours)
    {
        wire.Script(Nora, new Delivery.Again(TimeSpan.FromSeconds(90), "too many"), new Delivery.Again(null, "down"));
        Put(Nora, "one");
        var wall = new WallClock(clock);
        var (count, isSet) = (0L, false);
        await Sending(() =>
        {
            if (wire.All.Count == 1 && !isSet && file.Write(session => session.Post.NextTryAt()) is not null)
            {
                count = clock.GetTimestamp();
                wall.Set(TimeSpan.FromHours(hours));
                isSet = true;
                Put(Pia, "hers");
            }

            if (isSet && wire.All.Any(sent => sent.Chat == Pia) && wire.All.Count(sent => sent.Chat == Nora) == 2)
            {
                Assert.InRange(clock.GetElapsedTime(count).TotalSeconds, 85, 151);
            }

            return wire.All.Count(sent => sent.Chat == Nora) == 3;
        }, time: wall);
        Assert.Single(wire.All, sent => sent.Chat == Pia);
    }

    [Fact]
    public async Task After_a_start_with_a_clock_set_back_what_waits_goes_at_once()
    {
        Put(Nora, "one");
        var began = clock.GetTimestamp();
        var wall = new WallClock(clock);
        wall.Set(TimeSpan.FromDays(-2));
        await Sending(() => wire.All.Count == 1, time: wall);
        Assert.True(clock.GetElapsedTime(began) < TimeSpan.FromMinutes(1));
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

    private async Task Sending(Func<bool> holds, TimeSpan? step = null, TimeProvider? time = null)
    {
        using var stop = new CancellationTokenSource();
        var sender = Senders.Of(file, wire, time ?? clock, bell, Senders.Backups(folder.StudioPath));
        var steadily = new Steadily(new Backoff(new Random(1)), clock, NullLogger<Steadily>.Instance);
        var loop = steadily.Run("The sender", sender.Run, stop.Token);
        await Patience.Until(clock, step ?? TimeSpan.FromMilliseconds(100), holds);
        await Patience.End(loop, stop);
    }
}
