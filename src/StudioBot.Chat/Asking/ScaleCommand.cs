using StudioBot.Chat.Reading;
using StudioBot.Chat.Reading.Values;

namespace StudioBot.Chat.Asking;

/// <summary><c>scale ocean to 400 ml</c>: a recipe at another size.</summary>
internal sealed class ScaleCommand() : Unopened(records: false)
{
    private static readonly NameSlot Recipe = new(NameKind.Recipe, "recipe", "a recipe", "ocean") { IsRequired = true };
    private static readonly SurfaceSlot Size = new();
    private static readonly NameSlot Way = new(NameKind.Technique, "technique", "a technique", "bloom");
    private static readonly AmountSlot Total = new("a size", "to 400 ml");

    /// <inheritdoc/>
    public override CommandSheet Sheet { get; } = new(
        "scale", Room.Asking, "A recipe at another size.",
        [Recipe, Size, Way, Total],
        ["scale ocean to 400 ml", "scale ocean for 40cm round"])
    {
        Also = ["rescale"],
        Cues =
        [
            new("{recipe} {size}"),
            new("{recipe} {amount} for/to"),
        ],
    };
}
