using System.Globalization;
using Microsoft.Extensions.Logging;
using StudioBot.Chat;
using StudioBot.Host.Sending;
using StudioBot.Host.Telegram;
using StudioBot.Records;
using StudioBot.Records.Post;

namespace StudioBot.Host.Turns;

/// <summary>Settles one row of the inbox: what it changes, what is said of it and “done” are one commit.</summary>
/// <param name="file">The studio.</param>
/// <param name="ourId">Our own account.</param>
/// <param name="answering">What comes of a message.</param>
/// <param name="log">Where trouble is told.</param>
/// <param name="beforeCommit">The last that is done before the commit; a rehearsal crashes here.</param>
internal sealed class Clerk(
    StudioFile file, long ourId, Answering answering, ILogger<Clerk> log, Action? beforeCommit = null)
{
    /// <summary>Answers this row.</summary>
    /// <returns>What the service wants to hear of a press; none where it was none.</returns>
    public PressNotice? Settle(InboxRow row, DateTimeOffset now) => file.Write(session =>
    {
        var notice = Answer(row, ChatEvent.Read(row.Raw, ourId), session, now);
        session.Inbox.Done(row.Id, now);
        beforeCommit?.Invoke();
        return notice;
    });

    /// <summary>It broke: says so once, counts the try, and parks it with the third.</summary>
    public void Apologise(InboxRow row, Exception broken, DateTimeOffset now)
    {
        answering.Forget();
        var mark = Apology.NewMark();
        log.LogError(broken, "Answering update {Row} broke. Mark {Mark}.", row.Id, mark);
        var (html, plain) = ReplyMarkup.Parts(Apology.With(mark))[0];
        var isParked = file.Write(session =>
        {
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

            var isLast = session.Inbox.Broke(row.Id, $"{broken.GetType().Name}, mark {mark}", now);
            if (isLast)
            {
                StewardNotice.Put(session, $"parked {now:yyyy-MM-dd}", now, null, Parked(session, row, mark));
            }

            return isLast;
        });
        if (isParked)
        {
            log.LogError("Update {Row} broke three times and is parked.", row.Id);
        }
    }

    // One a day speaks for others that break the same way.
    private static IEnumerable<string> Parked(StudioSession session, InboxRow row, string mark) =>
    [
        $"A message {From(session, row.ChatId)} broke me three times and is left unanswered. Mark {mark}, in the log too.",
        "Nothing of it was recorded. Others are not held up.",
    ];

    private static string From(StudioSession session, long chat) =>
        session.Members.ByAccount(chat) is { } member ? $"from {member.Name}"
        : chat < 0 ? "in the group"
        : "that came";

    private PressNotice? Answer(InboxRow row, ChatEvent came, StudioSession session, DateTimeOffset now)
    {
        switch (came)
        {
            case ChatEvent.Wrote { Message: var message }:
                Put(session, message, answering.To(message, session), now);
                return null;
            case ChatEvent.Corrected { Message: var corrected }:
                PutInPlace(session, corrected, now);
                return null;
            case ChatEvent.Pressed press:
                return new PressNotice(press.Id, Pressed(session, press, row, now));
            case ChatEvent.Passed passed:
                log.LogDebug("Update {Row} is not answered: {Why}", row.Id, passed.Why);
                return null;
            default:
                throw new InvalidOperationException("Every event is answered or passed.");
        }
    }

    // A line on the button itself only asks; what a key stands for is known only here.
    private string? Pressed(StudioSession session, ChatEvent.Pressed press, InboxRow row, DateTimeOffset now)
    {
        var pressed = press.Message with { At = row.ReceivedAt };
        if (session.Members.ByAccount(pressed.UserId) is null)
        {
            return "This button is for members of the studio.";
        }

        if (Keyboard.KeyIn(press.Data) is not { } key)
        {
            PutForPress(session, pressed with { Words = press.Data }, now);
            return null;
        }

        // A press that came to nothing leaves the button to whom it is for.
        Outcome? outcome = null;
        var verdict = session.Attempt(
            () =>
            {
                var used = session.Presses.Use(key, pressed.UserId, pressed.Chat, now);
                outcome = used is PressVerdict.Said said
                    ? answering.To(pressed with { Words = said.Line, IsAgreed = said.Agrees }, session)
                    : null;
                return used;
            },
            _ => outcome is { Recorded: true });
        switch (verdict)
        {
            case PressVerdict.Said:
                if (outcome is not null)
                {
                    Posting.PutForPress(session, pressed, outcome, now);
                }

                return null;
            case PressVerdict.SomebodyElses:
                return "This button is somebody else's. Send the message yourself.";
            case PressVerdict.UsedBefore:
                return "This button was pressed before.";
            default:
                return "This button is too old. Send the message again.";
        }
    }

    private void PutForPress(StudioSession session, ChatMessage said, DateTimeOffset now)
    {
        if (answering.To(said, session) is { } outcome)
        {
            Posting.PutForPress(session, said, outcome, now);
        }
    }

    private static void Put(StudioSession session, ChatMessage message, Outcome? outcome, DateTimeOffset now)
    {
        if (outcome is not null)
        {
            Posting.Put(session, message, outcome, now);
        }
    }

    // A question may be put anew; what recorded must not change behind its author's back, nor may an edit record.
    private void PutInPlace(StudioSession session, ChatMessage corrected, DateTimeOffset now)
    {
        var first = session.Post.PutOnce(Posting.KeyOf(corrected.Chat, corrected.Id));
        if (first is null || answering.ToCorrected(corrected, first.MessageId, session) is not { } again)
        {
            return;
        }

        if (again.OnlyAsked && LetterText.Read(first.Payload).AnswersQuestion)
        {
            Posting.PutInPlace(session, corrected, again, now);
        }
        else if (!again.OnlyAsked)
        {
            Posting.PutForPress(session, corrected, again, now);
        }
    }
}
