using StudioBot.Chat.Reading.Values;

namespace StudioBot.Chat.Sharing;

/// <summary><c>bought 2 x 1 L medium 24.90 lot M-7</c>: what came.</summary>
internal sealed class BoughtCommand() : Unopened(records: true)
{
    private static readonly ItemsSlot Items = new() { IsRequired = true, InPacks = true };
    private static readonly LotSlot Lot = new() { MayBeNew = true };
    private static readonly MoneySlot Price = new(Items);

    /// <inheritdoc/>
    public override CommandSheet Sheet { get; } = new(
        "bought", Room.Sharing, "What came.",
        [Lot, Items, Price, RecordSlots.Day, RecordSlots.For],
        ["bought 2 x 1 L medium 24.90 lot M-7"])
    {
        Also = ["buys", "got", "purchased"],
    };
}
