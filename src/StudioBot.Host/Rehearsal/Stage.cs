using System.Text.Json.Nodes;
using Microsoft.Extensions.Logging.Abstractions;
using StudioBot.Chat;
using StudioBot.Chat.Replies;
using StudioBot.Craft.Practice;
using StudioBot.Host.Sending;
using StudioBot.Host.Telegram;
using StudioBot.Host.Ticks;
using StudioBot.Host.Turns;
using StudioBot.Records;
using StudioBot.Records.Post;

namespace StudioBot.Host.Rehearsal;

/// <summary>The service on a stage: its inbox, books, ticks and outbox are the real ones; the clock and the chat are
/// played.</summary>
internal sealed class Stage : IDisposable
{
    // So often one moment is looked at; more means a row that no verdict settles.
    private const int MostLooks = 100;

    private readonly StudioFile file;
    private readonly Answering answering;
    private readonly Clerk clerk;
    private readonly DueReminders reminders;
    private readonly WallKeeper wall;
    private readonly List<Shown> shown = [];
    private readonly Dictionary<(string Who, bool InGroup), long> lastMessages = [];
    private readonly Queue<(JsonObject Update, long Chat, string Kind, long? Message, string? Press)> onTheWay = new();

    private CrashPoint? crash;
    private bool isAway;
    private long updates;
    private long messages;

    /// <summary>An empty stage.</summary>
    /// <param name="practice">The trade's values.</param>
    /// <param name="isSample">Whether the studio is the invented one.</param>
    /// <param name="file">The studio, which the stage ends with itself; none: one in memory.</param>
    public Stage(TradePractice practice, bool isSample, StudioFile? file = null)
    {
        this.file = file ??= StudioFile.OpenInMemory();
        answering = new Answering(new Conversation(Catalogue.Find()), practice, isSample, "studio_bot");
        clerk = new Clerk(file, TalkUpdates.Us, answering, NullLogger<Clerk>.Instance, BeforeCommit);
        reminders = new DueReminders(file, practice, isSample, BeforeCommit);
        wall = new WallKeeper(file, practice, isSample);
    }

    /// <summary>The moment on the stage.</summary>
    public DateTimeOffset Now { get; private set; }

    /// <summary>Called with each message of the bot as it is sent.</summary>
    public Action<HeardMessage> Sent { get; set; } = _ => { };

    /// <summary>Who is who, by account.</summary>
    public Dictionary<long, Player> Players { get; } = [];

    /// <summary>Writes into the studio before anything is said.</summary>
    public void Found(DateTimeOffset now, Action<StudioSession> write)
    {
        Now = now;
        file.Write(write);
    }

    /// <summary>Time goes by; what is due until then is said at its moment.</summary>
    public void MoveTo(DateTimeOffset moment)
    {
        var looks = 0;
        while (!isAway && NextDue() is { } due && due <= moment)
        {
            looks = due > Now ? 0 : looks + 1;
            Now = due > Now ? due : Now;
            Tick();
            Send();
            if (looks > MostLooks)
            {
                throw new InvalidOperationException($"What is due at {due:u} is never settled.");
            }
        }

        Now = moment;
    }

    /// <summary>Somebody writes.</summary>
    public void Say(Player who, bool inGroup, string words, bool hasPhoto)
    {
        var message = ++messages;
        lastMessages[(who.Name, inGroup)] = message;
        Arrive(
            TalkUpdates.Message(++updates, message, who, inGroup, words, hasPhoto, Now),
            ChatOf(who, inGroup), "message", message, null);
    }

    /// <summary>Somebody corrects their last message.</summary>
    /// <returns>Whether there is one.</returns>
    public bool Correct(Player who, bool inGroup, string words)
    {
        if (!lastMessages.TryGetValue((who.Name, inGroup), out var message))
        {
            return false;
        }

        Arrive(
            TalkUpdates.Edit(++updates, message, who, inGroup, words, Now),
            ChatOf(who, inGroup), "edited_message", null, null);
        return true;
    }

    /// <summary>Somebody presses the newest button they can see that begins so.</summary>
    /// <returns>Whether there is one.</returns>
    public bool Press(Player who, string label, bool inGroup)
    {
        foreach (var letter in Enumerable.Reverse(shown))
        {
            var isHere = letter.Chat == who.Account && !inGroup || letter.Chat == TalkUpdates.Group;
            if (isHere && letter.Keys.FirstOrDefault(key =>
                    key.Label.StartsWith(label, StringComparison.OrdinalIgnoreCase)) is { } key)
            {
                var update = ++updates;
                Arrive(
                    TalkUpdates.Press(update, letter.Message, who, letter.Chat == TalkUpdates.Group, key.Data, Now),
                    letter.Chat, "callback_query", letter.Message, $"press-{update}");
                return true;
            }
        }

        return false;
    }

    /// <summary>The service goes away: what is written meanwhile waits.</summary>
    public void Stop() => isAway = true;

    /// <summary>The service is back: it reads what waited, and says what fell due.</summary>
    public void Start()
    {
        isAway = false;
        answering.Forget();
        file.Write(session => session.Post.FreeAll());
        Work();
        Tick();
        Send();
    }

    /// <summary>The service dies at the next message or ping, at this point of it, and starts again.</summary>
    public void CrashAt(CrashPoint point) => crash = point;

    /// <inheritdoc/>
    public void Dispose() => file.Dispose();

    private static long ChatOf(Player who, bool inGroup) => inGroup ? TalkUpdates.Group : who.Account;

    private DateTimeOffset? NextDue() => file.Write(session => session.Reminders.NextDue());

    private void Arrive(JsonObject update, long chat, string kind, long? message, string? press)
    {
        onTheWay.Enqueue((update, chat, kind, message, press));
        if (!isAway)
        {
            Work();
            Tick();
            Send();
        }
    }

    // Stores what waits at the service, then settles it row by row.
    private void Work()
    {
        while (onTheWay.TryDequeue(out var next))
        {
            file.Write(session => session.Inbox.Store(
                new Incoming(
                    next.Update["update_id"]!.GetValue<long>(), next.Chat, next.Kind, next.Update.ToJsonString())
                {
                    MessageId = next.Message,
                    PressId = next.Press,
                },
                Now));
        }

        while (file.Write(session => session.Inbox.Next()) is [_, ..] rows)
        {
            foreach (var row in rows)
            {
                Settle(row);
            }

            Send();
        }
    }

    private void Settle(InboxRow row)
    {
        try
        {
            if (clerk.Settle(row, Now) is { Notice: { } notice })
            {
                Sent(new HeardMessage(Now, "notice", IsPing: false, notice, []));
            }
        }
        catch (PlayedCrashException)
        {
            Restart();
        }
        catch (Exception broken)
        {
            clerk.Apologise(row, broken, Now);
        }
    }

    private void Tick()
    {
        try
        {
            reminders.Say(Now);
        }
        catch (PlayedCrashException)
        {
            Restart();
            reminders.Say(Now);
        }

        while (wall.Look(Now))
        {
            Send();
        }
    }

    private void BeforeCommit()
    {
        if (crash == CrashPoint.BeforeCommit)
        {
            crash = null;
            throw new PlayedCrashException();
        }
    }

    private void Send()
    {
        while (file.Write(session => session.Post.Claim(Now)) is { } post)
        {
            if (crash == CrashPoint.AfterCommit)
            {
                crash = null;
                Restart();
                continue;
            }

            var message = Carry(post);
            if (crash == CrashPoint.AfterSend)
            {
                crash = null;
                Restart();
                continue;
            }

            file.Write(session => session.Post.Sent(post.Id, Now, message));
        }
    }

    // A new process: it knows nothing but the file, and what was claimed may have arrived.
    private void Restart()
    {
        answering.Forget();
        file.Write(session => session.Post.FreeAll());
    }

    private long Carry(Post post)
    {
        var letter = file.Write(session => Letter.Of(post, session.Post));
        if (letter.Pin is not null)
        {
            return letter.Message ?? 0;
        }

        var said = post.MaybeSent ? ReplyMarkup.MaybeRepeated(letter) : letter;
        var earlier = letter.InPlaceOf is { } key
            ? file.Write(session => session.Post.PutOnce(key)?.MessageId)
            : letter.Message;
        if (earlier is { } replaced)
        {
            shown.RemoveAll(one => one.Chat == post.ChatId && one.Message == replaced);
        }

        var message = earlier ?? ++messages;
        List<Key> keys = [.. letter.Keys.SelectMany(row => row)];
        shown.Add(new Shown(post.ChatId, message, keys));
        var to = post.ChatId == TalkUpdates.Group ? "group"
            : Players.TryGetValue(post.ChatId, out var player) ? player.Name
            : "nobody";
        var enclosed = letter is { File: { } enclosure, BringsPicture: false }
            ? new ReplyFile(enclosure.Name, enclosure.MediaType, enclosure.Content).InWords
            : null;
        Sent(new HeardMessage(
            Now, to, letter.ByItself, Seen(said.Plain, enclosed), [.. keys.Select(one => one.Label)])
        {
            File = letter.File,
        });
        return message;
    }

    private static string Seen(string words, string? enclosed) => enclosed is null ? words
        : $"{words}\n({enclosed})".TrimStart('\n');

    private sealed record Shown(long Chat, long Message, IReadOnlyList<Key> Keys);

    private sealed class PlayedCrashException : Exception;
}
