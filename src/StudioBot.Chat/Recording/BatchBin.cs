using StudioBot.Chat.Reading.Values;

namespace StudioBot.Chat.Recording;

/// <summary><c>batch 13 bin sour</c>: a batch thrown away.</summary>
internal sealed class BatchBin() : Unopened(records: true)
{
    private static readonly ChoiceSlot Bin = new("", "bin", ["bin", "binned"]) { IsRequired = true };
    private static readonly BatchSlot Batch = new() { TakesBare = true, IsRequired = true };
    private static readonly TextSlot Why = new("a reason", "sour") { After = Bin };

    /// <inheritdoc/>
    public override CommandSheet Sheet { get; } = new(
        "batch", Room.Recording, "A batch thrown away.",
        [Batch, Bin, Why],
        ["batch 13 bin sour"]);
}
