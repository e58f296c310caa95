using System.Globalization;
using StudioBot.Chat;
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
    public static string KeyOf(long chat, long message) => Key(chat, message, 0);

    /// <summary>Puts the answer to a message.</summary>
    public static void Put(StudioSession session, ChatMessage message, Answered answered, DateTimeOffset now) =>
        Put(session, message, answered, now, part => Key(message.Chat, message.Id, part), inPlaceOf: null);

    /// <summary>Puts the answer to a press: a new message of its own, as often as it is pressed.</summary>
    public static void PutForPress(StudioSession session, ChatMessage press, Answered answered, DateTimeOffset now) =>
        Put(session, press, answered, now, _ => null, inPlaceOf: null);

    /// <summary>Puts the answer to a corrected message in the place of the first one.</summary>
    public static void PutInPlace(
        StudioSession session, ChatMessage corrected, Answered answered, DateTimeOffset now) =>
        Put(session, corrected, answered, now, _ => null, KeyOf(corrected.Chat, corrected.Id));

    private static void Put(
        StudioSession session,
        ChatMessage message,
        Answered answered,
        DateTimeOffset now,
        Func<int, string?> onceKey,
        string? inPlaceOf)
    {
        var parts = ReplyMarkup.Parts(answered.Reply);
        var keyboard = new Keyboard(answered.Reply.Buttons);
        foreach (var (key, line) in keyboard.Kept)
        {
            session.Presses.Put(new Press(key, message.UserId, message.Chat, line, now + ButtonsLast));
        }

        for (var part = 0; part < parts.Count; part++)
        {
            var letter = new Letter(parts[part].Html, parts[part].Plain, part == parts.Count - 1 ? keyboard.Rows : [])
            {
                ReplyTo = message.Kind == ChatKind.Group && part == 0 ? message.Id : null,
                InPlaceOf = part == 0 ? inPlaceOf : null,
                AnswersQuestion = answered.ToQuestion,
            };
            session.Post.Put(message.Chat, LetterText.Of(letter), Urgency.Reply, now, onceKey(part));
        }
    }

    private static string Key(long chat, long message, int part) =>
        string.Create(CultureInfo.InvariantCulture, $"answer {chat} {message} {part}");
}
