using StudioBot.Chat.Reading.Values;

namespace StudioBot.Chat.Recording;

/// <summary><c>batch 13 added 30 ml thinner</c>: what was added to a batch.</summary>
internal sealed class BatchAmend() : Unopened(records: true)
{
    private static readonly ChoiceSlot Added = new("", "what was added", ["added", "add"]) { IsRequired = true };
    private static readonly ItemsSlot Items = new() { IsRequired = true };
    private static readonly BatchSlot Batch = new() { TakesBare = true, IsRequired = true };

    /// <inheritdoc/>
    public override CommandSheet Sheet { get; } = new(
        "batch", Room.Recording, "What was added to a batch.",
        [Batch, Added, Items, RecordSlots.Day, RecordSlots.For],
        ["batch 13 added 30 ml thinner"]);
}
