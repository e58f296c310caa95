using StudioBot.Chat.Reading;
using StudioBot.Chat.Reading.Values;
using StudioBot.Chat.Replies;
using StudioBot.Records.Members;

namespace StudioBot.Chat.House;

/// <summary><c>members new account Pia</c>: an invitation by which a member comes back with another account.</summary>
internal sealed class MembersAccount : Act
{
    private static readonly ChoiceSlot Word = new("", "account", ["account"]) { IsRequired = true };
    private static readonly PersonSlot Member = new("member") { IsRequired = true };

    /// <inheritdoc/>
    public override CommandSheet Sheet { get; } = new(
        "members", Room.House, "A new account for a member.",
        [Word, Member],
        ["members new account Pia"])
    {
        More = "The same member with another account.",
        StewardsOnly = true,
        PrivateOnly = true,
    };

    /// <inheritdoc/>
    internal override Reply Do(Phrase said, Writing writing)
    {
        var member = writing.MemberNamed(said.Of(Member))!;
        return MembersInvite.Of(
            $"A new account for {member.Name}. The old one speaks for nobody once it is used.",
            new Invited(member.Role, member.Id),
            writing);
    }
}
