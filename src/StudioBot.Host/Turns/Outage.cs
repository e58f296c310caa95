using System.Collections.Concurrent;
using Microsoft.Extensions.Logging;
using StudioBot.Chat.Replies;
using StudioBot.Host.Logging;
using StudioBot.Host.Sending;
using StudioBot.Host.Telegram;
using StudioBot.Records;

namespace StudioBot.Host.Turns;

/// <summary>A time in which the studio can't be written. What came waits, and each chat it came from hears so once:
/// past the outbox, which can't be written either.</summary>
internal sealed class Outage(ILogger<Outage> log)
{
    /// <summary>How long to wait before it is tried again.</summary>
    public static readonly TimeSpan Rest = TimeSpan.FromSeconds(10);

    private static readonly Letter NotSaved = LetterOf(new Reply(
        new Block.Line("Not saved: there is no room on the studio's disk, or it can't be written."),
        new Block.Line("Your message waits and is taken as soon as it can be. A steward should look at the machine.")));

    private readonly ConcurrentDictionary<long, bool> told = [];
    private string? why;

    /// <summary>Why nothing can be written; none where it can.</summary>
    public string? Why => Volatile.Read(ref why);

    /// <summary>It can't be written: these chats hear so, each once until it is over.</summary>
    public async Task Tell(
        IWire wire, IEnumerable<long> chats, UnwritableStudioException trouble, CancellationToken cancellation)
    {
        if (Interlocked.Exchange(ref why, trouble.Message) is null)
        {
            log.LogError(
                Events.StudioNotWritable,
                trouble, "Nothing can be written: {Why} It is tried again every {Rest}.", trouble.Message, Rest);
        }

        foreach (var chat in chats.Where(chat => chat != 0).Distinct().Where(chat => told.TryAdd(chat, true)))
        {
            if (await wire.Send(chat, NotSaved, cancellation) is not Delivery.Sent)
            {
                told.TryRemove(chat, out _);
            }
        }
    }

    /// <summary>Something was written.</summary>
    public void Over()
    {
        if (Interlocked.Exchange(ref why, null) is not null)
        {
            told.Clear();
            log.LogInformation(Events.StudioWritableAgain, "The studio can be written again.");
        }
    }

    private static Letter LetterOf(Reply reply)
    {
        var (html, plain) = ReplyMarkup.Parts(reply)[0];
        return new Letter(html, plain, []);
    }
}
