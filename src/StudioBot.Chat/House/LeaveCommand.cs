using StudioBot.Chat.Reading;
using StudioBot.Chat.Replies;
using StudioBot.Chat.Sharing;
using StudioBot.Records.Members;

namespace StudioBot.Chat.House;

/// <summary><c>leave</c>: leaves the studio.</summary>
internal sealed class LeaveCommand : Act
{
    /// <inheritdoc/>
    public override CommandSheet Sheet { get; } = new(
        "leave", Room.House, "Leaves the studio.",
        [],
        ["leave"])
    {
        More = "Once agreed to.",
    };

    /// <inheritdoc/>
    internal override Reply Do(Phrase said, Writing writing)
    {
        var (author, session) = (writing.Author, writing.Session);
        if (Stewards.IsLast(author, session))
        {
            return new Reply(
                new Block.Headline("You are the last steward, so you stay. Nothing recorded."),
                new Block.Line("Somebody else keeps house first:"),
                new Block.Sample("role Pia steward"))
            {
                IsTrouble = true,
            };
        }

        if (!writing.Turn.IsAgreed)
        {
            return Asked(author, writing);
        }

        session.Members.Leave(author.Id, writing.Act);
        foreach (var steward in session.Members.All().Where(member => member.Role == Role.Steward))
        {
            writing.Tell(steward, new Reply(
                [new Block.Line($"{author.Name} has left the studio.")],
                [UndoCommand.Button("Take that back", writing.Act.Id)]));
        }

        return new Reply(
            new Block.Headline($"You have left, {author.Name}."),
            new Block.Line("I write to you no more. An invitation lets you back in, under your name."));
    }

    private static Reply Asked(Member author, Writing writing)
    {
        List<Block> blocks =
        [
            new Block.Headline("Leave the studio? Nothing recorded yet."),
            new Block.Line("What you recorded stays, under your name. Nothing reminds you any more."),
        ];
        if (Purses.Of(writing.Studio).SumOf(author.Name) != default)
        {
            blocks.Add(new Block.Line("Your balance is open, and stays so."));
        }

        return new Reply(blocks, [new Button("Yes, leave", "leave") { Agrees = true }]) { IsTrouble = true };
    }
}
