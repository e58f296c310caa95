using StudioBot.Chat.Reading.Values;

namespace StudioBot.Chat.House;

/// <summary><c>material white</c>: what is known of a material.</summary>
internal sealed class MaterialShow() : Unopened(records: false)
{
    private static readonly NamesSlot Material = new();

    /// <inheritdoc/>
    public override CommandSheet Sheet { get; } = new(
        "material", Room.House, "What is known of a material.",
        [Material],
        ["material white", "limit"])
    {
        Also = ["materials", "limit", "limits"],
    };
}
