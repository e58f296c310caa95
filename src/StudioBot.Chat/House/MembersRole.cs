using StudioBot.Chat.Reading.Values;

namespace StudioBot.Chat.House;

/// <summary><c>role Pia steward</c>: what a member may do.</summary>
internal sealed class MembersRole() : Unopened(records: true)
{
    private static readonly PersonSlot Member = new("member") { IsRequired = true };
    private static readonly ChoiceSlot NewRole = new(
        "role", "role: roles are member and steward", ["member", "steward"])
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
}
