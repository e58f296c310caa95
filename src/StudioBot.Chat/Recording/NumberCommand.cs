using StudioBot.Chat.Reading;
using StudioBot.Chat.Reading.Values;

namespace StudioBot.Chat.Recording;

/// <summary><c>number 30cm panel</c>: a number to write under a piece before the gloves go on.</summary>
internal sealed class NumberCommand() : Unopened(records: true)
{
    private static readonly SurfaceSlot Size = new() { IsRequired = true };
    private static readonly NameSlot Way = new(NameKind.Technique, "technique", "a technique", "bloom");

    /// <inheritdoc/>
    public override CommandSheet Sheet { get; } = new(
        "number", Room.Recording, "A number to write under a piece before the gloves go on.",
        [Size, Way, RecordSlots.For],
        ["number 30cm panel"]);
}
