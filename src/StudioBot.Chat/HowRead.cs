using StudioBot.Chat.Reading;
using StudioBot.Chat.Replies;
using StudioBot.Chat.Sharing;

namespace StudioBot.Chat;

/// <summary>Answers about the reading itself: how a message was read, what is doubtful, what can't be read.</summary>
internal static class HowRead
{
    private const int MostActs = 3;
    private const int MostChoices = 6;

    /// <summary>How a record was read where only questions are answered.</summary>
    public static Reply Of(IReadOnlyList<Phrase> said) => new(
        [
            new Block.Headline("Read, nothing recorded."),
            .. said.SelectMany(phrase => Reading(phrase)),
            new Block.Line("Only read here: sent in the chat, it is recorded."),
        ],
        [])
    {
        IsTrouble = true,
    };

    /// <summary>What waits for its author's word.</summary>
    public static Reply Doubt(Heard.Doubtful doubtful, Turn turn) => new(
        [
            new Block.Headline("Nothing recorded yet."),
            new Block.Line(Ended(Sentence(doubtful.Why))),
            new Block.Line("Meant like this?"),
            new Block.Sample(InThis(turn, doubtful.Line)),
        ],
        [new Button("Yes, like this", doubtful.Line) { Agrees = true }])
    {
        IsTrouble = true,
    };

    /// <summary>The same words as a minute ago, which may be a slip.</summary>
    public static Reply Again(Turn turn) => new(
        [
            new Block.Headline("The same as just now. Nothing recorded yet."),
            new Block.Line("Meant a second time?"),
            new Block.Sample(turn.Words),
        ],
        [new Button("Yes, once more", turn.Words) { Agrees = true }])
    {
        IsTrouble = true,
    };

    /// <summary>A record that was corrected in its message, of which nothing was recorded before.</summary>
    public static Reply Corrected(Turn turn) => turn.Photo is not null
        ? new Reply(
            new Block.Headline("Nothing was recorded before."),
            new Block.Line("Send the photo anew, with the corrected words."))
        {
            IsTrouble = true,
        }
        : new Reply(
            [
                new Block.Headline("Nothing was recorded before."),
                new Block.Line("Record it like this?"),
                new Block.Sample(turn.Words),
            ],
            [new Button("Yes, like this", turn.Words)])
        {
            IsTrouble = true,
        };

    /// <summary>What the message recorded as it was first sent.</summary>
    public static Reply Stays(IReadOnlyList<Records.Acts.Act> acts) => new(
        [
            new Block.Headline("What you corrected was recorded as first sent, and stays so:"),
            .. acts.Take(MostActs).Select(act => new Block.Sample(act.Words)),
            new Block.Line("To change it press Undo, and send the corrected message anew."),
        ],
        [.. acts.Take(MostActs).Select((act, at) =>
            UndoCommand.Button(acts.Count == 1 ? "Undo" : $"Undo {at + 1}", act.Id))])
    {
        IsTrouble = true,
    };

    /// <summary>The word, why, and a message that works.</summary>
    public static Reply Trouble(Heard.Unread unread, Turn turn, Catalogue catalogue)
    {
        var isRecord = catalogue.Of(unread.Command) is [{ Records: true }, ..];
        return new Reply(
            [
                new Block.Headline(Ended(Sentence(unread.Trouble)) + (isRecord ? " Nothing recorded." : "")),
                new Block.Line("Try"),
                new Block.Sample(InThis(turn, unread.Trouble.Try)),
            ],
            [.. unread.Trouble.Choices.Take(MostChoices).Select(choice => new Button(choice.Label, choice.Line))])
        {
            IsTrouble = true,
        };
    }

    private static IEnumerable<Block> Reading(Phrase phrase)
    {
        yield return new Block.Sample(phrase.Line);
        var rows = phrase.Understood.Where(meaning => meaning.Key.StartsWith("answer_", StringComparison.Ordinal))
            .Select(meaning => new Figure(meaning.Key[7..].Replace('_', ' '), meaning.Value)).ToList();
        if (rows.Count > 0)
        {
            yield return new Block.Figures(rows);
        }

        if (phrase.Remark.Length > 0)
        {
            yield return new Block.Line($"Remark: {phrase.Remark}");
        }
    }

    // A group passes on only what begins with a slash.
    private static string InThis(Turn turn, string sample) => turn.Chat == ChatKind.Group ? "/" + sample : sample;

    private static string Ended(string sentence) => sentence[^1] is '?' or '.' ? sentence : sentence + ".";

    private static string Sentence(Misread why) => why.Word.Length > 0
        ? $"“{why.Word}” {why.Why}"
        : char.ToUpperInvariant(why.Why[0]) + why.Why[1..];
}
