using System.Globalization;
using Microsoft.Extensions.Logging;
using StudioBot.Chat;
using StudioBot.Chat.Replies;
using StudioBot.Host.Logging;
using StudioBot.Host.Sending;
using StudioBot.Host.Telegram;
using StudioBot.Records;
using StudioBot.Records.Members;
using StudioBot.Records.Post;

namespace StudioBot.Host.Turns;

/// <summary>Settles rows of the inbox: what one changes, what is said of it and “done” stand together or not at all.
/// </summary>
/// <param name="file">The studio.</param>
/// <param name="ourId">Our own account.</param>
/// <param name="answering">What comes of a message.</param>
/// <param name="log">Where trouble is told.</param>
/// <param name="beforeCommit">The last that is done for a row; a rehearsal crashes here.</param>
internal sealed class Clerk(
    StudioFile file, long ourId, Answering answering, ILogger<Clerk> log, Action? beforeCommit = null)
{
    private readonly FloodGate gate = new();
    private readonly Pressing pressing = new(answering);

    /// <summary>Answers this row in a commit of its own.</summary>
    /// <returns>What the service wants to hear of a press; none where it was none.</returns>
    public PressNotice? Settle(InboxRow row, DateTimeOffset now) => file.Write(session => Settle(row, session, now));

    /// <summary>Answers this row in the session's commit; if it breaks it takes back only what it wrote, is apologised
    /// for and counted.</summary>
    /// <exception cref="UnwritableStudioException">The disk takes nothing more, and nothing of the session stands.
    /// </exception>
    /// <exception cref="LostSessionException">The database has taken back the whole session.</exception>
    public SettledRow SettleWithin(InboxRow row, StudioSession session, DateTimeOffset now)
    {
        try
        {
            return new SettledRow(row, session.Attempt(() => Settle(row, session, now), _ => true), Broke: false);
        }
        catch (Exception broken) when (broken is not (UnwritableStudioException or LostSessionException))
        {
            Apologise(row, broken, session, now);
            return new SettledRow(row, null, Broke: true);
        }
    }

    /// <summary>It broke: says so once, counts the try, and parks it with the third.</summary>
    public void Apologise(InboxRow row, Exception broken, DateTimeOffset now) =>
        file.Write(session => Apologise(row, broken, session, now));

    /// <summary>What was gathered of a session that did not come to its commit is forgotten.</summary>
    public void Forget() => answering.Forget();

    private PressNotice? Settle(InboxRow row, StudioSession session, DateTimeOffset now)
    {
        var notice = Answer(row, ChatEvent.Read(row.Raw, ourId).In(session), session, now);
        session.Inbox.Done(row.Id, now);
        beforeCommit?.Invoke();
        return notice;
    }

    private void Apologise(InboxRow row, Exception broken, StudioSession session, DateTimeOffset now)
    {
        answering.Forget();
        var mark = Apology.NewMark();
        log.LogError(Events.AnswerBroke, broken, "Answering update {Row} broke. Mark {Mark}.", row.Id, mark);
        if (row.ChatId != 0)
        {
            // Once for a row, however often it is tried.
            var (html, plain) = ReplyMarkup.Parts(Apology.With(mark))[0];
            session.Post.Put(
                row.ChatId,
                LetterText.Of(new Letter(html, plain, [])),
                Urgency.Reply,
                now,
                string.Create(CultureInfo.InvariantCulture, $"apology {row.Id}"));
        }

        if (session.Inbox.Broke(row.Id, $"{broken.GetType().Name}, mark {mark}", now))
        {
            StewardNotice.Put(session, $"parked {now:yyyy-MM-dd}", now, null, Parked(session, row, mark));
            log.LogError(Events.UpdateParked, "Update {Row} broke three times and is parked.", row.Id);
        }
    }

    // One a day speaks for others that break the same way.
    private static IEnumerable<string> Parked(StudioSession session, InboxRow row, string mark) =>
    [
        $"A message {From(session, row.ChatId)} broke me three times and is left unanswered. "
            + $"Mark {mark}, in the log too.",
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
                if (IsFree(message, row, session, now))
                {
                    Put(session, message, answering.To(message, session), now);
                }

                return null;
            case ChatEvent.Corrected { Message: var corrected }:
                if (IsFree(corrected, row, session, now))
                {
                    PutInPlace(session, corrected, now);
                }

                return null;
            case ChatEvent.Pressed press:
                var pressed = press with { Message = press.Message with { At = row.ReceivedAt } };
                return new PressNotice(press.Id, TooFast(pressed, row, session, now)
                    ?? pressing.Of(session, pressed, now));
            case ChatEvent.Moved moved:
                if (Moving.Follow(session, moved.From, moved.To, now))
                {
                    log.LogInformation(Events.ChatMoved, "Chat {From} is {To} from now on.", moved.From, moved.To);
                }

                return null;
            case ChatEvent.Passed passed:
                log.LogDebug(Events.UpdateNotAnswered, "Update {Row} is not answered: {Why}", row.Id, passed.Why);
                return null;
            default:
                throw new InvalidOperationException("Every event is answered or passed.");
        }
    }

    // What is not meant for us in a group is nobody's flood.
    private bool IsFree(ChatMessage message, InboxRow row, StudioSession session, DateTimeOffset now)
    {
        if (message.Kind == ChatKind.Group && !answering.IsMeant(message, session))
        {
            return true;
        }

        // All who hide behind a group's name have one account.
        var account = message.Mask is null ? message.UserId : message.Chat;
        var passage = gate.Pass(account, isPress: false, row.Id, message.At);
        if (passage.Told is { } wait)
        {
            var slower = new Outcome(Slower(wait), OnlyAsked: false)
            {
                Barred = answering.Noted(TooMuch, message, session),
                IsSilent = session.Members.ByAccount(message.UserId) is null,
            };
            Posting.PutForPress(session, message, slower, now);
            Note(session, message, slower.Barred, now);
        }

        return passage.IsFree;
    }

    private string? TooFast(ChatEvent.Pressed press, InboxRow row, StudioSession session, DateTimeOffset now)
    {
        var passage = gate.Pass(press.Message.UserId, isPress: true, row.Id, row.ReceivedAt);
        if (passage.Told is not null)
        {
            Note(session, press.Message, answering.Noted(TooMuch, press.Message, session), now);
        }

        return passage.IsFree ? null : "Slower, please: nothing was done.";
    }

    private const string TooMuch = "too fast";

    private static Reply Slower(TimeSpan wait) => new(
        new Block.Line("Slower, please: that was too much at once."),
        new Block.Line(string.Create(
            CultureInfo.InvariantCulture,
            $"I read on in {Math.Ceiling(wait.TotalSeconds):0} s; what comes before that is not read.")))
    {
        IsTrouble = true,
    };

    private static void Put(StudioSession session, ChatMessage message, Outcome? outcome, DateTimeOffset now)
    {
        if (outcome is not null)
        {
            Posting.Put(session, message, outcome, now);
            Note(session, message, outcome.Barred, now);
        }
    }

    // A question may be put anew; what recorded must not change behind its author's back, nor may an edit record.
    private void PutInPlace(StudioSession session, ChatMessage corrected, DateTimeOffset now)
    {
        var first = session.Post.PutOnce(Posting.KeyOf(corrected));
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

        Note(session, corrected, again.Barred, now);
    }

    /// <summary>Writes into the book of refusals what was refused, where it was.</summary>
    internal static void Note(StudioSession session, ChatMessage message, Barred? barred, DateTimeOffset now)
    {
        if (barred is not null)
        {
            session.Refusals.Put(new Refused(
                message.UserId, barred.Standing, message.Name, Redaction.Of(barred.Words), barred.Why, now));
        }
    }
}
