using StudioBot.Chat.Reading.Values;

namespace StudioBot.Chat.House;

/// <summary><c>members invite Jonas</c>: an invitation.</summary>
internal sealed class MembersInvite() : Unopened(records: true)
{
    private static readonly ChoiceSlot Invite = new("", "invite", ["invite"]) { IsRequired = true };
    private static readonly ChoiceSlot AsRole = new("role", "a role", ["member", "steward"]);
    private static readonly PersonSlot Name = new("name") { MayBeNew = true, IsRequired = true };

    /// <inheritdoc/>
    public override CommandSheet Sheet { get; } = new(
        "members", Room.House, "An invitation.",
        [Invite, AsRole, Name],
        ["members invite Jonas"])
    {
        AlsoSaying = ["invite"],
        StewardsOnly = true,
    };
}
