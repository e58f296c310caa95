using StudioBot.Chat.Reading;
using StudioBot.Chat.Reading.Values;

namespace StudioBot.Chat.Recording;

/// <summary><c>pour 30cm panel bloom 6 colours batch 12</c>: a pour, and the piece that comes of it.</summary>
internal sealed class PourCommand() : Unopened(records: true)
{
    private static readonly SurfaceSlot Size = new() { IsRequired = true };
    private static readonly NameSlot Way = new(NameKind.Technique, "technique", "a technique", "bloom");
    private static readonly BatchSlot Batch = new();
    private static readonly NameSlot Recipe = new(NameKind.Recipe, "recipe", "a recipe", "ocean") { IsStrict = false };
    private static readonly ColoursSlot Colours = new();
    private static readonly AirSlot Air = new();

    /// <inheritdoc/>
    public override CommandSheet Sheet { get; } = new(
        "pour", Room.Recording, "A pour, and the piece that comes of it.",
        [Size, Way, Batch, Recipe, Colours, Air, RecordSlots.Day, RecordSlots.For],
        ["pour 30cm panel bloom 6 colours batch 12", "pour 25cm tile swipe white, lamp black"])
    {
        Also = ["poured"],
    };
}
