using StudioBot.Chat.Reading;
using StudioBot.Chat.Reading.Values;

namespace StudioBot.Chat.House;

/// <summary><c>technique swipe film 1.4mm</c>: a technique's film in this studio.</summary>
internal sealed class TechniqueSet() : Unopened(records: true)
{
    private static readonly NameSlot Way = new(NameKind.Technique, "technique", "a technique", "bloom")
    {
        IsRequired = true,
    };
    private static readonly FilmSlot Film = new() { IsRequired = true };

    /// <inheritdoc/>
    public override CommandSheet Sheet { get; } = new(
        "technique", Room.House, "A technique's film in this studio.",
        [Film, Way],
        ["technique swipe film 1.4mm"])
    {
        StewardsOnly = true,
    };
}
