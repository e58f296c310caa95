using StudioBot.Chat.Reading.Values;

namespace StudioBot.Chat.Sharing;

/// <summary><c>balance</c>: who used, paid and owes what.</summary>
internal sealed class BalanceCommand() : Unopened(records: false)
{
    private static readonly PeriodSlot Month = new();
    private static readonly PersonSlot Whose = new("member") { MayBeMe = true };

    /// <inheritdoc/>
    public override CommandSheet Sheet { get; } = new(
        "balance", Room.Sharing, "Who used, paid and owes what.",
        [Month, Whose],
        ["balance"])
    {
        Also = ["balances", "owe"],
        Cues =
        [
            new("what/how use/used/spend/spent/owe month"),
            new("who/what/how owe/owes"),
        ],
    };
}
