using StudioBot.Chat.Reading.Values;

namespace StudioBot.Chat.Asking;

/// <summary><c>compare 5.50/10g 1 g per 20ml vs 18/50g 0.3 g per 20ml</c>: which colour costs less in use.</summary>
internal sealed class CompareCommand() : Unopened(records: false)
{
    private static readonly OfferSlot First = new("a") { IsRequired = true };
    private static readonly OfferSlot Second = new("b") { IsRequired = true };

    /// <inheritdoc/>
    public override CommandSheet Sheet { get; } = new(
        "compare", Room.Asking, "Which colour costs less in use.",
        [First, Second],
        ["compare 5.50/10g 1 g per 20ml vs 18/50g 0.3 g per 20ml", "compare blue mica vs ultramarine"])
    {
        Cues =
        [
            new("cheaper {material}"),
        ],
    };
}
