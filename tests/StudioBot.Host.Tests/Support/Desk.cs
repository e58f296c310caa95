using System.Text.Json;
using System.Text.Json.Nodes;
using Microsoft.Extensions.Logging;
using Microsoft.Extensions.Time.Testing;
using StudioBot.Host.Health;
using StudioBot.Host.Sending;
using StudioBot.Host.Telegram;
using StudioBot.Host.Turns;
using StudioBot.Records;
using StudioBot.Records.Post;

namespace StudioBot.Host.Tests.Support;

/// <summary>A studio in a temporary file with its inbox, its clerk and its outbox; Nora keeps house, Pia belongs to it.</summary>
internal sealed class Desk : IDisposable
{
    public const long Us = 123456789;
    public const long Nora = 7;
    public const long Pia = 8;

    private readonly TempFolder folder = new();
    private readonly Queue<bool> breaks = new();
    private readonly CapturedLog log = new();
    private readonly LoggerFactory loggers;

    public Desk()
    {
        loggers = new LoggerFactory([log]);
        Outage = new Outage(loggers.CreateLogger<Outage>());
        File = StudioFile.Open(folder.StudioPath);
        Wire = new RecordingWire(Clock);
        Studios.Found(File, Clock.GetUtcNow().AddDays(-1), (Nora, "Nora"), (Pia, "Pia"));
    }

    public FakeTimeProvider Clock { get; } = new(new DateTimeOffset(2026, 11, 25, 9, 0, 0, TimeSpan.Zero));

    public RecordingWire Wire { get; }

    public StudioFile File { get; private set; }

    /// <summary>Where the file is.</summary>
    public string Path => folder.StudioPath;

    public DateTimeOffset Now => Clock.GetUtcNow();

    /// <summary>Whether it can be written.</summary>
    public Outage Outage { get; }

    /// <summary>What was counted.</summary>
    public Counts Counts { get; } = new();

    /// <summary>What was logged.</summary>
    public string Log => log.Text;

    /// <summary>How often something was about to be committed.</summary>
    public int Tries { get; private set; }

    /// <summary>What was recorded and holds, the oldest first.</summary>
    public IReadOnlyList<string> Recorded =>
        [.. File.Read(view => view.Acts.Recent(null, Now)).Select(act => act.Words).Reverse()];

    /// <summary>What was refused and why, the oldest first.</summary>
    public IReadOnlyList<string> Refused =>
        [.. File.Read(view => view.Refusals.Last(1000)).Select(one => $"{one.Words} {one.Why}").Reverse()];

    /// <summary>Whether each of the next commits breaks; those after them do not.</summary>
    public void Break(params bool[] these)
    {
        foreach (var one in these)
        {
            breaks.Enqueue(one);
        }
    }

    /// <summary>Somebody writes, now.</summary>
    public JsonObject Message(long update, long chat, int message, string? text, long? by = null) =>
        StandInUpdates.Message(update, chat, message, text, by, Now);

    /// <summary>Puts updates into the inbox.</summary>
    public void Store(params JsonObject[] updates) => File.Write(session => Store(session, updates));

    /// <summary>Puts updates into the inbox in this session.</summary>
    public void Store(StudioSession session, params JsonObject[] updates)
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
                Now);
        }
    }

    /// <summary>One who settles rows.</summary>
    public Clerk Clerk() =>
        new(File, Us, Studios.Answering(), loggers.CreateLogger<Clerk>(), BeforeCommit);

    /// <summary>What has rows settled.</summary>
    public InboxLoop Loop(Bell? inbox = null, Sender? sender = null) =>
        new(File, Clerk(), Wire, inbox ?? new Bell(Clock), sender ?? Sender(Wire), Outage, Counts, Clock, loggers.CreateLogger<InboxLoop>());

    /// <summary>What carries the post.</summary>
    public Sender Sender(IWire wire, Bell? outbox = null) =>
        Senders.Of(File, wire, Clock, outbox, Senders.Backups(Path));

    /// <summary>Has all that waits settled.</summary>
    public async Task Settle()
    {
        using var stop = new CancellationTokenSource();
        var loop = Loop().Run(stop.Token);
        await Patience.Until(
            Clock, TimeSpan.FromMilliseconds(100), () => File.Write(session => session.Inbox.Next()).Count == 0);
        await Patience.End(loop, stop);
    }

    /// <summary>Stores these and has them settled.</summary>
    public Task Settle(params JsonObject[] updates)
    {
        Store(updates);
        return Settle();
    }

    /// <summary>Claims whatever waits, as a sender would.</summary>
    public List<Letter> Posted()
    {
        var letters = new List<Letter>();
        while (File.Write(session => session.Post.Claim(Now)) is { } post)
        {
            letters.Add(LetterText.Read(post.Payload));
            File.Write(session => session.Post.Sent(post.Id, Now, post.Id));
        }

        return letters;
    }

    /// <summary>The program ends and starts anew.</summary>
    public void Reopen()
    {
        File.Dispose();
        File = StudioFile.Open(folder.StudioPath);
    }

    public void Dispose()
    {
        Counts.Dispose();
        File.Dispose();
        loggers.Dispose();
        folder.Dispose();
    }

    private void BeforeCommit()
    {
        Tries++;
        if (breaks.TryDequeue(out var isBreaking) && isBreaking)
        {
            throw new InvalidOperationException("ours");
        }
    }
}
