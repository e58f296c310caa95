using StudioBot.Chat.Reading;
using StudioBot.Chat.Reading.Values;

namespace StudioBot.Chat.Asking;

/// <summary><c>ratio 3:1 250 ml</c>: the parts of a mixture.</summary>
internal sealed class RatioCommand() : Unopened(records: false)
{
    private static readonly RatioSlot Ratio = new() { IsRequired = true };
    private static readonly CupPartsSlot Have = new();
    private static readonly AmountSlot Total = new("a total", "250 ml") { Bare = Measure.Volume };

    /// <inheritdoc/>
    public override CommandSheet Sheet { get; } = new(
        "ratio", Room.Asking, "The parts of a mixture.",
        [Ratio, Have, Total],
        ["ratio 3:1 250 ml", "ratio 3:1 have 60 medium 25 thinner", "ratio 2:1 have 80 A"])
    {
        Cues =
        [
            new("split/parts {amount}"),
        ],
    };
}
