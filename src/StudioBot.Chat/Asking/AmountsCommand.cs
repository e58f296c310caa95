using StudioBot.Chat.Reading;
using StudioBot.Chat.Reading.Values;

namespace StudioBot.Chat.Asking;

/// <summary><c>amounts 30cm panel bloom 6 colours</c>: how much paint a surface takes.</summary>
internal sealed class AmountsCommand() : Unopened(records: false)
{
    private static readonly SurfaceSlot Size = new() { IsRequired = true };
    private static readonly NameSlot Way = new(NameKind.Technique, "technique", "a technique", "bloom");
    private static readonly ColoursSlot Colours = new();
    private static readonly ChoiceSlot Detail = new("", "a detail", new Dictionary<string, string> { ["mixes"] = "mixes", ["grounds"] = "grounds", ["steps"] = "grounds" });

    /// <inheritdoc/>
    public override CommandSheet Sheet { get; } = new(
        "amounts", Room.Asking, "How much paint a surface takes.",
        [Size, Way, Colours, Detail],
        ["amounts 30cm panel bloom 6 colours", "how much for a 40cm round?", "amounts 6 x 10cm tile swipe 3 colours"])
    {
        Also = ["amount"],
        Cues =
        [
            new("how much {size}"),
            new("paint need/needed/needs {size}"),
            new("how much paint/bloom/swipe {size}"),
            new("need/needed/needs {size}"),
        ],
    };
}
