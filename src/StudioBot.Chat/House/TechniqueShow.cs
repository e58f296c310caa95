using StudioBot.Chat.Reading;
using StudioBot.Chat.Reading.Values;

namespace StudioBot.Chat.House;

/// <summary><c>technique bloom</c>: what a technique reckons with.</summary>
internal sealed class TechniqueShow() : Unopened(records: false)
{
    private static readonly NameSlot Way = new(NameKind.Technique, "technique", "a technique", "bloom");

    /// <inheritdoc/>
    public override CommandSheet Sheet { get; } = new(
        "technique", Room.House, "What a technique reckons with.",
        [Way],
        ["technique bloom"])
    {
        Also = ["techniques"],
    };
}
