using StudioBot.Chat.Drying;
using StudioBot.Chat.Pings;
using StudioBot.Chat.Reading;
using StudioBot.Chat.Replies;
using StudioBot.Chat.Sharing;
using StudioBot.Records;

namespace StudioBot.Chat;

/// <summary>From a message to its answer.</summary>
public sealed class Conversation(Catalogue catalogue)
{
    private const int MostNotes = 3;
    private const int MostReadyDays = 3;
    private const string Undo = "Undo";

    private readonly Listener _listener = new(catalogue);

    /// <summary>How the message is understood; nothing is done.</summary>
    public Heard Hear(Turn turn, Studio studio) => _listener.Hear(turn, studio.Words);

    /// <summary>The answer to a question; a record is answered with how it was read, and none is written. None where
    /// the
    /// message is not meant for the bot.</summary>
    public Reply? Answer(Turn turn, Studio studio) => Answer(Hear(turn, studio), turn, studio);

    private Reply? Answer(Heard heard, Turn turn, Studio studio) => heard switch
    {
        Heard.Silence => null,
        Heard.Asked { Said: { Form: Ask ask } said } => Noted(ask.Answer(said, turn, studio), said),
        Heard.Told told => HowRead.Of([told.Said]),
        Heard.Doubtful doubtful => HowRead.Doubt(doubtful, turn),
        Heard.Unread unread => HowRead.Trouble(unread, turn, catalogue),
        _ => throw new InvalidOperationException("Every way of hearing a message has its answer."),
    };

    /// <summary>Answers the message and records what it tells; none where it is not meant for the bot.</summary>
    /// <param name="turn">The message.</param>
    /// <param name="studio">The studio, over the same session.</param>
    /// <param name="session">Where it is recorded: what is told, its reply and its reminders are one commit.</param>
    public Outcome? Take(Turn turn, Studio studio, StudioSession session)
    {
        var heard = Hear(turn, studio);
        if (heard is Heard.Silence)
        {
            return null;
        }

        if (Permissions.Against(heard, turn, session) is { } refused)
        {
            return refused;
        }

        var outcome = heard switch
        {
            Heard.Told told => Recorded([told.Said], turn, studio, session),
            Heard.Doubtful doubtful when turn.IsAgreed => Recorded(doubtful.Said, turn, studio, session),
            _ => new Outcome(Ready(Answer(heard, turn, studio)!), heard is Heard.Asked or Heard.Unread),
        };

        // Who tried to come in and did not is a stranger still; the try counts all the same.
        return turn.Member is null && (turn.UserId is not { } account || session.Members.ByAccount(account) is null)
            ? Permissions.StillStranger(outcome, turn, session)
            : outcome.Reply.Refused is { } why
                ? outcome with { Barred = Permissions.Noted(why, turn, session) }
                : outcome;
    }

    /// <summary>What comes of a message that is not for who wrote it, or not there, whatever it says; none where it is,
    /// or where it is not meant for the bot.</summary>
    public Outcome? Bars(Turn turn, Studio studio, StudioSession session) =>
        Hear(turn, studio) is not Heard.Silence and var heard ? Permissions.Against(heard, turn, session) : null;

    /// <summary>A record that is not its sender's own word is not written, and stands in the book of refusals.
    /// </summary>
    /// <param name="reply">What its sender hears.</param>
    /// <param name="why">Why not, in a few words.</param>
    /// <param name="turn">The message.</param>
    /// <param name="session">Where is found who they are.</param>
    public static Outcome Refuse(Reply reply, string why, Turn turn, StudioSession session) =>
        new(reply, OnlyAsked: false) { Barred = Permissions.Noted(why, turn, session) };

    /// <summary>Answers a message that was corrected; none where there is nothing to say. A question is answered anew;
    /// nothing is recorded: what was recorded before is shown with its Undo, else the corrected message is offered.
    /// </summary>
    /// <param name="turn">The message as it reads now.</param>
    /// <param name="answer">Which message answered it first, whose buttons may have recorded; none where that is
    /// unknown.</param>
    /// <param name="studio">The studio, over the same session.</param>
    /// <param name="session">Where what was recorded is found.</param>
    public Outcome? TakeCorrected(Turn turn, long? answer, Studio studio, StudioSession session)
    {
        switch (Hear(turn, studio))
        {
            case Heard.Asked or Heard.Unread:
                return Take(turn, studio, session);
            case Heard.Told or Heard.Doubtful
                when turn.Member is not null && Written(turn, answer, session) is [_, ..] acts:
                return new Outcome(Ready(HowRead.Stays(acts)), OnlyAsked: false);
            case (Heard.Told or Heard.Doubtful) and var heard when turn.Member is not null:
                return Permissions.Against(heard, turn, session)
                    ?? (heard is Heard.Told
                        ? new Outcome(Ready(HowRead.Corrected(turn)), OnlyAsked: false)
                        : Take(turn with { IsAgreed = false }, studio, session));
            default:
                return null;
        }
    }

    private static IReadOnlyList<Records.Acts.Act> Written(Turn turn, long? answer, StudioSession session) =>
        turn.ChatId is { } chat
            ? session.Acts.Of(chat, new[] { turn.MessageId, answer }.OfType<long>())
            : [];

    private Outcome Recorded(IReadOnlyList<Phrase> said, Turn turn, Studio studio, StudioSession session)
    {
        if (!turn.IsAgreed && said.Any(phrase => IsSaidAgain(phrase, WordsOf(phrase, said, turn), turn, session)))
        {
            return new Outcome(Ready(HowRead.Again(turn)), OnlyAsked: false);
        }

        var asides = new List<Aside>();
        var reply = session.Attempt(
            () => Joined([.. said.Select(phrase =>
                Done(phrase, WordsOf(phrase, said, turn), turn, studio, session, asides))]),
            kept => !kept.IsTrouble);
        return reply.IsTrouble
            ? new Outcome(Ready(reply), OnlyAsked: false)
            : new Outcome(Ready(reply), OnlyAsked: false)
            {
                Asides = [.. asides.Select(Ready)],
                Recorded = true,
                MayName = said.Any(phrase => phrase.Form is not Act { MayName: false }),
            };
    }

    // Where a message holds several records, each has its own words.
    private static string WordsOf(Phrase phrase, IReadOnlyList<Phrase> said, Turn turn) =>
        said.Count > 1 ? phrase.Line : turn.Words;

    private static bool IsSaidAgain(Phrase phrase, string words, Turn turn, StudioSession session) =>
        turn.Member is { } author
        && session.Acts.SameAgain(author, phrase.Form.Sheet.Word, words, turn.Now) is not null;

    private static Reply Done(
        Phrase phrase, string words, Turn turn, Studio studio, StudioSession session, List<Aside> asides)
    {
        var writing = new Writing(phrase, turn, studio, session, words);
        var reply = Noted(((Act)phrase.Form).Do(phrase, writing), phrase);
        if (reply.IsTrouble)
        {
            return reply;
        }

        var charged = Charges.Book(writing);
        asides.AddRange(writing.Asides);
        var pings = new PingTurn(studio, turn.Now);
        PingPlans.Renew(session, pings, writing.Touched, writing.HasAct ? writing.Act : null);
        if (phrase.Form is Act { ShowsReadyDays: true })
        {
            reply = reply with { Blocks = [.. reply.Blocks, .. ReadyDays(writing.Spoken, pings)] };
        }

        if (!writing.HasAct)
        {
            return reply;
        }

        reply = WithRoom(reply, charged);
        if (writing.For is { } other)
        {
            asides.Add(new Aside(other, Told(writing, reply)));
        }

        return !((Act)phrase.Form).ShowsUndo || IsGone(turn, session)
            ? reply
            : reply with { Buttons = [.. reply.Buttons, UndoOf(writing)] };
    }

    // What a phone has no room for is in the balance all the same.
    private static Reply WithRoom(Reply reply, string? words)
    {
        if (words is null)
        {
            return reply;
        }

        var longer = reply with { Blocks = [.. reply.Blocks, new Block.Line(words)] };
        return LineBudget.Of(longer) <= LineBudget.Lines ? longer : reply;
    }

    // What is now expected of the pieces that were touched; a few, as a phone shows them.
    private static IEnumerable<Block> ReadyDays(IReadOnlyCollection<int> pieces, PingTurn pings)
    {
        var dry = pieces.Order().Select(pings.Reckoning.Of).OfType<PieceOutlook>().Take(MostReadyDays).ToList();
        return dry.Select(outlook =>
        {
            var words = new OutlookWords(outlook, new StudioMoment(pings.Zone, pings.Now));
            return new Block.Line(dry.Count == 1 ? words.Whole : $"{outlook.Piece.Number}: {words.InList}");
        });
    }

    // Who has just left could not press it.
    private static bool IsGone(Turn turn, StudioSession session) =>
        turn.Member is { } author && session.Members.All().All(member => member.Id != author.Id);

    private static Button UndoOf(Writing writing) => UndoCommand.Button(Undo, writing.Act.Id) with { IsInPlace = true };

    // The other is told, and may undo.
    private static Reply Told(Writing writing, Reply reply) => new(
        [new Block.Line($"{writing.Author.Name} recorded for you: {writing.Words}"), .. reply.Blocks.Take(2)],
        [UndoOf(writing)]);

    // Two records in one message have one reply; one that could not be done takes the other back too.
    private static Reply Joined(IReadOnlyList<Reply> replies) =>
        replies.FirstOrDefault(reply => reply.IsTrouble) is { } trouble ? trouble
        : replies.Count == 1 ? replies[0]
        : new Reply(
            [.. replies.SelectMany(reply => reply.Blocks)],
            [.. replies.SelectMany((reply, at) => reply.Buttons
                .Where(button => button.Label == Undo)
                .Select(button => button with { Label = $"{Undo} {at + 1}", IsInPlace = false }))]);

    // A button whose line may record is kept with its owner; one that only asks carries its line.
    private Reply Ready(Reply reply) => reply with
    {
        Buttons = [.. reply.Buttons.Select(button =>
            button with { Records = button.Agrees || catalogue.MayRecord(button.Line) })],
    };

    private Aside Ready(Aside aside) => aside with { Reply = Ready(aside.Reply) };

    // What was corrected or assumed is said once, at the end, where there is room for it.
    private static Reply Noted(Reply reply, Phrase said)
    {
        if (said.Notes.Count == 0)
        {
            return reply;
        }

        var notes = string.Join("; ", said.Notes.Distinct().Take(MostNotes));
        return reply with { Blocks = [.. reply.Blocks, new Block.Line(notes + ".")] };
    }
}
