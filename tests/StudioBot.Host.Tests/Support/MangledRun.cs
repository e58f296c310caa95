using System.Globalization;
using System.Text;
using System.Text.Json;
using Microsoft.Extensions.Logging.Abstractions;
using Microsoft.Extensions.Time.Testing;
using StudioBot.Host.Health;
using StudioBot.Host.Sending;
using StudioBot.Host.Telegram;
using StudioBot.Host.Turns;
using StudioBot.Records;
using StudioBot.Records.Post;

namespace StudioBot.Host.Tests.Support;

/// <summary>Mangled updates through the loops that fetch and answer them, as fast as they go.</summary>
internal sealed class MangledRun(int seed, int count)
{
    private const long Us = 123456789;
    private const long Nora = 7;
    private const int AtOnce = 100;
    private const int WarmUp = 1000;
    private static readonly TimeSpan Longest = TimeSpan.FromMinutes(10);

    private readonly WaitedClock clock = new(new DateTimeOffset(2026, 11, 25, 9, 0, 0, TimeSpan.Zero));
    private readonly Outage outage = new(NullLogger<Outage>.Instance);
    private readonly UpdateMangler mangler = new(seed);
    private string? broken;
    private int given;
    private int unread;
    private bool askedOn;
    private long before;

    /// <summary>Runs them; whatever is not handled fails here.</summary>
    /// <returns>What came of them, in one line.</returns>
    public async Task<string> Run()
    {
        await using var standIn = await StandIn.Start();
        using var file = StudioFile.OpenInMemory();
        Studios.Found(file, clock.GetUtcNow().AddDays(-1), (Nora, "Nora"));
        standIn.Script("getUpdates", [.. Enumerable.Repeat(new Answer(context => Some().Write(context)), count)]);
        using var noMore = new CancellationTokenSource();
        using var stop = new CancellationTokenSource();
        using var counts = new Counts();
        var bell = new Bell(clock);
        var clerk = new Clerk(file, Us, Studios.Answering(), NullLogger<Clerk>.Instance);
        var wire = new Nowhere();
        var inbox = new InboxLoop(file, clerk, wire, bell, Senders.Of(file, wire, clock), outage, counts, clock, NullLogger<InboxLoop>.Instance);
        var fetching = Task.Run(() => Updates(standIn, file, inbox, counts).Run(noMore.Token), CancellationToken.None);
        var settling = Task.Run(() => inbox.Run(stop.Token), CancellationToken.None);
        Task[] loops = [fetching, settling];
        double grown;
        try
        {
            await Until(loops, () => given >= WarmUp);
            before = GC.GetTotalMemory(forceFullCollection: true);
            await Until(loops, () => askedOn);
            await noMore.CancelAsync();
            await Until([settling], IsDrained(file));
            grown = (GC.GetTotalMemory(forceFullCollection: true) - before) / 1048576.0;
        }
        finally
        {
            await noMore.CancelAsync();
            await stop.CancelAsync();
            await Task.WhenAll(loops).ContinueWith(_ => { }, TaskScheduler.Default);
        }

        await Assert.ThrowsAnyAsync<OperationCanceledException>(() => Task.WhenAll(loops));
        return Judged(file, grown);
    }

    private string Judged(StudioFile file, double grown)
    {
        var parked = file.Write(session => session.Inbox.AllParked());
        Assert.NotEmpty(parked);
        Assert.All(parked, row => Assert.Equal(Inbox.MostTries, row.Tries));
        var told = 0;
        while (file.Write(session => session.Post.ClaimFor(Nora)) is { } post)
        {
            told += LetterText.Read(post.Payload).Plain.Contains("broke me three times", StringComparison.Ordinal) ? 1 : 0;
            file.Write(session => session.Post.Sent(post.Id, clock.GetUtcNow()));
        }

        // Once a day that passes on our clock.
        var days = (clock.GetUtcNow() - new DateTimeOffset(2026, 11, 25, 0, 0, 0, TimeSpan.Zero)).Days + 1;
        Assert.InRange(told, 1, days);
        Assert.True(grown <= 50, $"seed {seed}: grown by {grown:0.0} MiB");
        return string.Create(
            CultureInfo.InvariantCulture,
            $"mangled updates: seed {seed}, {given} given, {unread} answers no JSON, {parked.Count} parked after {Inbox.MostTries} tries, "
                + $"told {told} times in {days} days, 0 unhandled, memory {grown:+0.0;-0.0} MiB");
    }

    private UpdateLoop Updates(StandIn standIn, StudioFile file, InboxLoop inbox, Counts counts) => new(
        Bots.At(standIn).Polling,
        new CallGuard(TimeSpan.FromMinutes(10), TimeProvider.System),
        file,
        inbox.Receive,
        new Pulse(clock),
        outage,
        new Nowhere(),
        counts,
        new Backoff(new Random(seed)),
        clock,
        NullLogger<UpdateLoop>.Instance);

    private async Task Until(Task[] loops, Func<bool> holds)
    {
        using var enough = new CancellationTokenSource(Longest);
        while (!holds())
        {
            Assert.False(enough.IsCancellationRequested, $"seed {seed}: not done after {given}");
            if (loops.FirstOrDefault(loop => loop.IsCompleted) is { } ended)
            {
                await ended;
                Assert.Fail($"seed {seed}: a loop came to its end after {given}");
            }

            // Not while all are at work: how long a commit may take is counted on the same clock.
            if (clock.IsWaitedFor)
            {
                clock.Advance(TimeSpan.FromSeconds(1));
                await Task.Yield();
            }
            else
            {
                await Task.Delay(TimeSpan.FromMilliseconds(1), CancellationToken.None);
            }
        }
    }

    // Asked once a day of our clock only: who asks again and again has its turn in the file like all others.
    private Func<bool> IsDrained(StudioFile file)
    {
        var next = clock.GetUtcNow();
        return () =>
        {
            if (clock.GetUtcNow() < next)
            {
                return false;
            }

            next += TimeSpan.FromDays(1);
            return file.Write(session => session.Inbox.Next(1)).Count == 0;
        };
    }

    // A hundred that are JSON together; one that is none makes the whole answer none, and so comes alone.
    private Answer Some()
    {
        askedOn = given >= count && broken is null;
        var some = new StringBuilder();
        for (var number = 0; number < AtOnce && given < count; number++)
        {
            var one = broken ?? mangler.Next();
            if (!IsJson(one) && some.Length > 0)
            {
                broken = one;
                break;
            }

            (broken, given) = (null, given + 1);
            some.Append(some.Length > 0 ? "," : "").Append(one);
            if (!IsJson(one))
            {
                unread++;
                break;
            }
        }

        return Answer.Raw(200, "application/json", $"{{\"ok\":true,\"result\":[{some}]}}");
    }

    private static bool IsJson(string text)
    {
        try
        {
            // As deep as the library reads, less the answer around it.
            using var read = JsonDocument.Parse(text, new JsonDocumentOptions { MaxDepth = 60 });
            return read.RootElement.ValueKind == JsonValueKind.Object;
        }
        catch (JsonException)
        {
            return false;
        }
    }

    /// <summary>A way out on which nothing is kept.</summary>
    private sealed class Nowhere : IWire
    {
        public Task<Delivery> Send(long chat, Letter letter, CancellationToken cancellation) =>
            Task.FromResult<Delivery>(new Delivery.Sent(1));

        public Task<Delivery> Edit(long chat, long message, Letter letter, CancellationToken cancellation) =>
            Task.FromResult<Delivery>(new Delivery.Sent(message));

        public Task<Delivery> Pin(long chat, long message, bool isPinned, CancellationToken cancellation) =>
            Task.FromResult<Delivery>(new Delivery.Sent(message));

        public Task<bool> AnswerPress(string press, string? notice, CancellationToken cancellation) => Task.FromResult(true);
    }

    /// <summary>A clock that knows whether anybody waits for it.</summary>
    private sealed class WaitedClock(DateTimeOffset start) : FakeTimeProvider(start)
    {
        private int waits;

        public bool IsWaitedFor => Volatile.Read(ref waits) > 0;

        public override ITimer CreateTimer(TimerCallback callback, object? state, TimeSpan dueTime, TimeSpan period)
        {
            Interlocked.Increment(ref waits);
            return new Wait(base.CreateTimer(callback, state, dueTime, period), () => Interlocked.Decrement(ref waits));
        }
    }

    private sealed class Wait(ITimer timer, Action end) : ITimer
    {
        private int ended;

        public bool Change(TimeSpan dueTime, TimeSpan period) => timer.Change(dueTime, period);

        public void Dispose()
        {
            timer.Dispose();
            if (Interlocked.Exchange(ref ended, 1) == 0)
            {
                end();
            }
        }

        public ValueTask DisposeAsync()
        {
            Dispose();
            return ValueTask.CompletedTask;
        }
    }
}
