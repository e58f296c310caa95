using StudioBot.Chat.Reading.Values;

namespace StudioBot.Chat.Recording;

/// <summary><c>batch 13</c>: a batch and where it went.</summary>
internal sealed class BatchShow() : Unopened(records: false)
{
    private static readonly BatchSlot Batch = new() { TakesBare = true, IsRequired = true };

    /// <inheritdoc/>
    public override CommandSheet Sheet { get; } = new(
        "batch", Room.Recording, "A batch and where it went.",
        [Batch],
        ["batch 13"]);
}
