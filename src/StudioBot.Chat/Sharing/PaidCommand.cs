using StudioBot.Chat.Reading.Values;

namespace StudioBot.Chat.Sharing;

/// <summary><c>paid 30 to Pia</c>: money from one to another.</summary>
internal sealed class PaidCommand() : Unopened(records: true)
{
    private static readonly MoneySlot Sum = new() { IsRequired = true };
    private static readonly PersonSlot To = new("to") { Leads = [], Purse = "kitty", IsRequired = true };

    /// <inheritdoc/>
    public override CommandSheet Sheet { get; } = new(
        "paid", Room.Sharing, "Money from one to another.",
        [Sum, To, RecordSlots.Day],
        ["paid 30 to Pia", "paid 30 to kitty"])
    {
        Also = ["pay"],
        IsOwnOnly = true,
        Cues =
        [
            new("gave/give/sent/owed/transferred {member}"),
        ],
    };
}
