using StudioBot.Chat.Asking;
using StudioBot.Chat.Reading;
using StudioBot.Chat.Replies;
using StudioBot.Records.Members;

namespace StudioBot.Chat.House;

/// <summary><c>members</c>: who belongs to the studio.</summary>
internal sealed class MembersShow : Ask
{
    /// <inheritdoc/>
    public override CommandSheet Sheet { get; } = new(
        "members", Room.House, "Who belongs to the studio.",
        [RowPages.Page],
        ["members"])
    {
        More = "Stewards are named as such.",
        Also = ["member"],
    };

    /// <inheritdoc/>
    internal override Reply Answer(Phrase said, Turn turn, Studio studio)
    {
        var members = studio.View.Members.All();
        if (members.Count == 0)
        {
            return new Reply(new Block.Headline("Nobody belongs to this studio yet"));
        }

        var stewards = members.Count(member => member.Role == Role.Steward);
        return RowPages.Of(
            $"{Count(members.Count, "member")}, {Count(stewards, "steward")} among them",
            [],
            [new RowGroup("", [.. members.Select(member => new Figure(
                member.Name, member.Role == Role.Steward ? "steward" : "member"))])],
            studio.IsSample ? [new Block.Line(Sentences.Invented(studio).Trim())] : [],
            said);
    }

    private static string Count(int count, string noun) => count == 1 ? $"1 {noun}" : $"{count} {noun}s";
}
