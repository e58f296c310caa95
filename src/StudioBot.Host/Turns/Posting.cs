using System.Globalization;
using StudioBot.Chat;
using StudioBot.Chat.Replies;
using StudioBot.Host.Sending;
using StudioBot.Host.Telegram;
using StudioBot.Records;
using StudioBot.Records.Post;

namespace StudioBot.Host.Turns;

/// <summary>Puts answers into the outbox, in the session that settles what they answer.</summary>
internal static class Posting
{
    private static readonly TimeSpan ButtonsLast = TimeSpan.FromDays(30);

    /// <summary>The once-key of the first part of the answer to a message, by which an edit finds it again.</summary>
    public static string KeyOf(ChatMessage message) => Key(message, 0);

    /// <summary>Puts the answer to a message.</summary>
    public static void Put(StudioSession session, ChatMessage message, Outcome answered, DateTimeOffset now) =>
        Put(
            session,
            message,
            answered,
            now,
            part => Key(message, part),
            inPlaceOf: null);

    /// <summary>Puts the answer to a press: a new message of its own, as often as it is pressed.</summary>
    public static void PutForPress(StudioSession session, ChatMessage press, Outcome answered, DateTimeOffset now) =>
        Put(session, press, answered, now, _ => null, inPlaceOf: null);

    /// <summary>Puts the answer to a press in the place of the message that the button stands under.</summary>
    public static void PutOn(StudioSession session, ChatMessage press, Outcome answered, DateTimeOffset now) =>
        Put(session, press, answered, now, _ => null, inPlaceOf: null, press.MovedFrom is null ? press.Id : null);

    /// <summary>Puts the answer to a corrected message in the place of the first one.</summary>
    public static void PutInPlace(
        StudioSession session, ChatMessage corrected, Outcome answered, DateTimeOffset now) =>
        Put(session, corrected, answered, now, _ => null, KeyOf(corrected));

    private static void Put(
        StudioSession session,
        ChatMessage message,
        Outcome answered,
        DateTimeOffset now,
        Func<int, string?> onceKey,
        string? inPlaceOf,
        long? on = null)
    {
        if (answered.IsSilent)
        {
            return;
        }

        var keyboard = new Keyboard(answered.Reply.Buttons);
        Keep(session, keyboard, message.UserId, message.Chat, now);
        var letters = Letters(answered.Reply, keyboard);
        for (var part = 0; part < letters.Count; part++)
        {
            var letter = letters[part] with
            {
                ReplyTo = message is { Kind: ChatKind.Group, MovedFrom: null } && part == 0 ? message.Id : null,
                InPlaceOf = part == 0 && letters[0].File is null ? inPlaceOf : null,
                Message = part == 0 && letters[0].File is null ? on : null,
                AnswersQuestion = answered.OnlyAsked,
            };
            Put(session, message.Chat, letter, Urgency.Reply, now, onceKey(part));
        }

        PutBeside(session, answered, now);
    }

    /// <summary>Puts what others hear of it, where we can write to them: in their own chat, which has the number of
    /// their
    /// account.</summary>
    public static void PutBeside(StudioSession session, Outcome outcome, DateTimeOffset now)
    {
        foreach (var aside in outcome.Asides)
        {
            foreach (var account in session.Members.Accounts(aside.To.Id).Take(1))
            {
                PutByItself(session, account, account, aside.Reply, Urgency.Reply, now, null);
            }
        }
    }

    /// <summary>Puts what the bot says by itself.</summary>
    /// <param name="session">Where.</param>
    /// <param name="chat">To which chat.</param>
    /// <param name="owner">Whose its buttons are; none: anybody's of the studio.</param>
    /// <param name="reply">What.</param>
    /// <param name="urgency">Before what else it goes.</param>
    /// <param name="now">When.</param>
    /// <param name="onceKey">A key under which it is said at most once; none: it is said.</param>
    public static void PutByItself(
        StudioSession session,
        long chat,
        long? owner,
        Reply reply,
        Urgency urgency,
        DateTimeOffset now,
        string? onceKey)
    {
        var keyboard = new Keyboard(reply.Buttons);
        Keep(session, keyboard, owner, chat, now);
        var letters = Letters(reply, keyboard);
        for (var part = 0; part < letters.Count; part++)
        {
            Put(
                session,
                chat,
                letters[part] with { ByItself = true },
                urgency,
                now,
                onceKey is null ? null : $"{onceKey} {part}");
        }
    }

    // The buttons stand under the last words; a file takes those as its caption, or follows by itself where they are
    // more than a caption holds.
    private static List<Letter> Letters(Reply reply, Keyboard keyboard)
    {
        List<Letter> letters = [.. ReplyMarkup.Parts(reply).Select(part => new Letter(part.Html, part.Plain, []))];
        letters[^1] = letters[^1] with { Keys = keyboard.Rows };
        if (reply.File is { } enclosed)
        {
            var (file, trouble) = Enclosed(enclosed);
            if (file is null)
            {
                letters[^1] = letters[^1] with
                {
                    Html = $"{letters[^1].Html}\n{trouble}",
                    Plain = $"{letters[^1].Plain}\n{trouble}",
                };
            }
            else if (letters[^1].Plain.Length <= ReplyMarkup.LongestCaption)
            {
                letters[^1] = letters[^1] with { File = file };
            }
            else
            {
                letters.Add(new Letter("", "", []) { File = file });
            }
        }

        if (reply.BringsBackup)
        {
            letters.Add(BackupLetter.Wished);
        }

        return letters;
    }

    // A picture only shows what the words say: where it can't be drawn they go out without it, and say so.
    private static (PostFile? File, string Trouble) Enclosed(ReplyFile file)
    {
        try
        {
            return (new PostFile(file.Name, file.MediaType, file.Content), "");
        }
        catch (Exception undrawn) when (file.IsPicture)
        {
            return (null, $"(Its picture could not be drawn: {undrawn.GetBaseException().GetType().Name}.)");
        }
    }

    private static void Put(
        StudioSession session, long chat, Letter letter, Urgency urgency, DateTimeOffset now, string? onceKey) =>
        session.Post.Put(chat, LetterText.Of(letter), urgency, now, onceKey, letter.File);

    private static void Keep(
        StudioSession session, Keyboard keyboard, long? owner, long chat, DateTimeOffset now)
    {
        foreach (var (key, button) in keyboard.Kept)
        {
            var whose = button.IsAnybodys ? null : owner;
            session.Presses.Put(new Press(key, whose, chat, button.Line, now + ButtonsLast) { Agrees = button.Agrees });
        }
    }

    // By the chat it was written in: in the one that this is now, its number is another message's.
    private static string Key(ChatMessage message, int part) => string.Create(
        CultureInfo.InvariantCulture, $"answer {message.MovedFrom ?? message.Chat} {message.Id} {part}");
}
