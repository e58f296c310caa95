using StudioBot.Chat.Reading.Values;

namespace StudioBot.Chat.Sharing;

/// <summary><c>stock</c>: what is on the shelf.</summary>
internal sealed class StockCommand() : Unopened(records: false)
{
    private static readonly NamesSlot Materials = new();

    /// <inheritdoc/>
    public override CommandSheet Sheet { get; } = new(
        "stock", Room.Sharing, "What is on the shelf.",
        [Materials],
        ["stock", "stock white"])
    {
        Also = ["level", "levels", "inventory"],
        Cues =
        [
            new("left {material}"),
            new("how much have/got/have/there {material}"),
            new("any {material} left/have/got"),
            new("do we have {material}"),
            new("how much {material}"),
        ],
    };
}
