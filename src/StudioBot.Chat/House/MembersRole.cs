using StudioBot.Chat.Reading;
using StudioBot.Chat.Reading.Values;
using StudioBot.Chat.Replies;
using StudioBot.Records.Members;

namespace StudioBot.Chat.House;

/// <summary><c>role Pia steward</c>: what a member may do.</summary>
internal sealed class MembersRole : Act
{
    private const string Steward = "steward";

    private static readonly PersonSlot Member = new("member") { IsRequired = true };
    private static readonly ChoiceSlot NewRole = new(
        "role", "role: roles are member and steward", ["member", Steward])
    {
        IsRequired = true,
        IsStrict = true,
    };
    private static readonly ChoiceSlot Word = new("", "role", ["role", "roles"]) { IsRequired = true };

    /// <inheritdoc/>
    public override CommandSheet Sheet { get; } = new(
        "members", Room.House, "What a member may do.",
        [Word, Member, NewRole],
        ["role Pia steward"])
    {
        AlsoSaying = ["role", "roles"],
        StewardsOnly = true,
    };

    /// <inheritdoc/>
    internal override Reply Do(Phrase said, Writing writing)
    {
        var member = writing.MemberNamed(said.Of(Member))!;
        var role = said.Of(NewRole) == Steward ? Role.Steward : Role.Member;
        if (member.Role == role)
        {
            return Trouble($"{member.Name} is a {said.Of(NewRole)} already.");
        }

        if (Stewards.IsLast(member, writing.Session))
        {
            return Trouble($"{member.Name} is the last steward: somebody else becomes one first.");
        }

        writing.Session.Members.Change(member with { Role = role }, writing.Act);
        var may = role == Role.Steward
            ? "can invite others, and set what the studio uses"
            : "can ask and record, and set what the studio uses no more";
        if (member.Id != writing.Author.Id)
        {
            writing.Tell(member, new Reply(
                new Block.Line($"{writing.Author.Name} made you a {said.Of(NewRole)}: you {may}.")));
        }

        return new Reply(new Block.Headline($"{member.Name} is a {said.Of(NewRole)} now: {may}."));
    }

    private static Reply Trouble(string why) =>
        new(new Block.Headline(why), new Block.Line("Nothing recorded.")) { IsTrouble = true };
}
