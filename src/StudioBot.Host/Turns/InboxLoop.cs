using System.Globalization;
using Microsoft.Extensions.Logging;
using StudioBot.Host.Sending;
using StudioBot.Host.Telegram;
using StudioBot.Records;
using StudioBot.Records.Post;

namespace StudioBot.Host.Turns;

/// <summary>Answers what waits in the inbox, each chat in its order: the answer and “done” in one commit.</summary>
internal sealed class InboxLoop(
    StudioFile file,
    long ourId,
    Func<ChatMessage, Answered?> answer,
    IWire wire,
    Bell inbox,
    Bell outbox,
    TimeProvider time,
    ILogger<InboxLoop> log)
{
    private static readonly TimeSpan LongestRest = TimeSpan.FromMinutes(1);
    private static readonly TimeSpan RestAfterTrouble = TimeSpan.FromSeconds(1);

    /// <summary>Until it is stopped.</summary>
    public async Task Run(CancellationToken stop)
    {
        while (true)
        {
            stop.ThrowIfCancellationRequested();
            var rows = file.Write(session => session.Inbox.Next());
            var broken = 0;
            foreach (var row in rows)
            {
                broken += await Handle(row, stop) ? 0 : 1;
            }

            if (broken == rows.Count)
            {
                await inbox.Wait(broken > 0 ? RestAfterTrouble : LongestRest, stop);
            }
        }
    }

    private async Task<bool> Handle(InboxRow row, CancellationToken stop)
    {
        try
        {
            await Answer(row, stop);
            return true;
        }
        catch (Exception broken) when (!stop.IsCancellationRequested)
        {
            Apologise(row, broken);
            return false;
        }
        finally
        {
            outbox.Ring();
        }
    }

    private async Task Answer(InboxRow row, CancellationToken stop)
    {
        switch (ChatEvent.Read(row.Raw, ourId))
        {
            case ChatEvent.Wrote { Message: var message }:
                var answered = answer(message);
                Settle(row, (session, now) => Put(session, message, answered, now));
                break;
            case ChatEvent.Corrected { Message: var corrected }:
                var again = answer(corrected);
                Settle(row, (session, now) => PutInPlace(session, corrected, again, now));
                break;
            case ChatEvent.Pressed press:
                await AnswerPress(row, press, stop);
                break;
            case ChatEvent.Passed passed:
                log.LogDebug("Update {Row} is not answered: {Why}", row.Id, passed.Why);
                Settle(row, (_, _) => { });
                break;
        }
    }

    private async Task AnswerPress(InboxRow row, ChatEvent.Pressed press, CancellationToken stop)
    {
        var pressed = press.Message with { At = row.ReceivedAt };
        if (Keyboard.KeyIn(press.Data) is { } key)
        {
            var notice = Settle(row, (session, now) => SayKept(session, pressed, key, now));
            await wire.AnswerPress(press.Id, notice, stop);
            return;
        }

        // First, since the button turns until then; the line on it only asks.
        await wire.AnswerPress(press.Id, null, stop);
        var said = pressed with { Words = press.Data };
        var answered = answer(said);
        Settle(row, (session, now) => PutForPress(session, said, answered, now));
    }

    // What a key stands for is known only here; why it does not count is shown for a moment.
    private string? SayKept(StudioSession session, ChatMessage pressed, string key, DateTimeOffset now)
    {
        switch (session.Presses.Use(key, pressed.UserId, pressed.Chat, now))
        {
            case PressVerdict.Said kept:
                var said = pressed with { Words = kept.Line };
                PutForPress(session, said, answer(said), now);
                return null;
            case PressVerdict.SomebodyElses:
                return "This button is somebody else's. Send the message yourself.";
            case PressVerdict.UsedBefore:
                return "This button was pressed before.";
            default:
                return "This button is too old. Send the message again.";
        }
    }

    private static void Put(StudioSession session, ChatMessage message, Answered? answer, DateTimeOffset now)
    {
        if (answer is not null)
        {
            Posting.Put(session, message, answer, now);
        }
    }

    private static void PutForPress(StudioSession session, ChatMessage press, Answered? answer, DateTimeOffset now)
    {
        if (answer is not null)
        {
            Posting.PutForPress(session, press, answer, now);
        }
    }

    // A question may be put anew; what recorded must not change behind its author's back, nor may an edit record.
    private static void PutInPlace(StudioSession session, ChatMessage corrected, Answered? again, DateTimeOffset now)
    {
        var first = session.Post.PutOnce(Posting.KeyOf(corrected.Chat, corrected.Id));
        if (first is not null && again is { ToQuestion: true } && LetterText.Read(first.Payload).AnswersQuestion)
        {
            Posting.PutInPlace(session, corrected, again, now);
        }
    }

    private void Settle(InboxRow row, Action<StudioSession, DateTimeOffset> put) => Settle(row, (session, now) =>
    {
        put(session, now);
        return true;
    });

    private T Settle<T>(InboxRow row, Func<StudioSession, DateTimeOffset, T> put) => file.Write(session =>
    {
        var now = time.GetUtcNow();
        var result = put(session, now);
        session.Inbox.Done(row.Id, now);
        return result;
    });

    private void Apologise(InboxRow row, Exception broken)
    {
        var mark = Apology.NewMark();
        log.LogError(broken, "Answering update {Row} broke. Mark {Mark}.", row.Id, mark);
        var (html, plain) = ReplyMarkup.Parts(Apology.With(mark))[0];
        var isParked = file.Write(session =>
        {
            var now = time.GetUtcNow();
            if (row.ChatId != 0)
            {
                // Once for a row, however often it is tried.
                session.Post.Put(
                    row.ChatId,
                    LetterText.Of(new Letter(html, plain, [])),
                    Urgency.Reply,
                    now,
                    string.Create(CultureInfo.InvariantCulture, $"apology {row.Id}"));
            }

            return session.Inbox.Broke(row.Id, $"{broken.GetType().Name}, mark {mark}", now);
        });
        if (isParked)
        {
            log.LogError("Update {Row} broke three times and is parked.", row.Id);
        }
    }
}
