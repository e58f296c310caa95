using StudioBot.Chat.Reading;
using StudioBot.Chat.Reading.Values;

namespace StudioBot.Chat.Sharing;

/// <summary><c>count white 430 ml</c>: a stocktake.</summary>
internal sealed class CountCommand() : Unopened(records: true)
{
    private static readonly ChoiceSlot Gross = new("", "gross", ["gross"]);
    private static readonly ItemsSlot Items = new() { IsRequired = true, MayBeNothing = true };

    /// <inheritdoc/>
    public override CommandSheet Sheet { get; } = new(
        "count", Room.Sharing, "A stocktake.",
        [Gross, Items, RecordSlots.Day],
        ["count white 430 ml", "count white 612 g gross"])
    {
        Also = ["counted", "counting", "stocktake"],
    };

    /// <inheritdoc/>
    internal override IEnumerable<Meaning> AlsoUnderstood(Phrase said) => said.Has(Gross) ? [new("gross", "yes")] : [];
}
