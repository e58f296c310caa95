using StudioBot.Chat.Reading;
using StudioBot.Chat.Reading.Values;
using StudioBot.Chat.Replies;

namespace StudioBot.Chat.Sharing;

/// <summary><c>undo list</c>: your last ten records of two weeks, each with its button.</summary>
internal sealed class UndoList : Ask
{
    private const int LongestWords = 30;

    private static readonly ChoiceSlot List = new("", "list", ["list"]) { IsRequired = true };

    /// <inheritdoc/>
    public override CommandSheet Sheet { get; } = new(
        "undo", Room.Sharing, "Your last ten records.",
        [List],
        ["undo list"])
    {
        More = "Each with a button that takes it back.",
    };

    /// <inheritdoc/>
    internal override Reply Answer(Phrase said, Turn turn, Studio studio)
    {
        var author = studio.View.Members.All().FirstOrDefault(member => member.Name == turn.Who.Name);
        var acts = author is null ? []
            : turn is { Chat: ChatKind.Group, ChatId: { } chat } ? studio.View.Acts.RecentIn(chat, author, turn.Now)
            : studio.View.Acts.Recent(author, turn.Now);
        if (acts.Count == 0 && turn.Chat == ChatKind.Group)
        {
            return new Reply(
                new Block.Headline("You recorded nothing here in the last two weeks."),
                new Block.Line("What you recorded elsewhere is listed in private."));
        }

        if (acts.Count == 0)
        {
            return new Reply(new Block.Headline("You recorded nothing in the last two weeks."));
        }

        List<Block> blocks = [new Block.Headline("Your last records, the newest first:")];
        blocks.AddRange(acts.Select((act, at) => new Block.Line($"{at + 1}. {Short(act.Words)}")));
        return new Reply(
            blocks, [.. acts.Select((act, at) => UndoCommand.Button($"Undo {at + 1}", act.Id))]);
    }

    private static string Short(string words)
    {
        var line = words.ReplaceLineEndings("; ");
        return Labels.Cut(line, LongestWords + 1);
    }
}
