using StudioBot.Chat.Reading.Values;

namespace StudioBot.Chat.Sharing;

/// <summary><c>used 20 ml white</c>: what left the shelf.</summary>
internal sealed class UsedCommand() : Unopened(records: true)
{
    private static readonly PiecesSlot Piece = new() { Leads = ["for", "on"] };
    private static readonly ItemsSlot Items = new() { IsRequired = true };

    /// <inheritdoc/>
    public override CommandSheet Sheet { get; } = new(
        "used", Room.Sharing, "What left the shelf.",
        [Piece, Items, RecordSlots.Day, RecordSlots.For],
        ["used 20 ml white", "used 20ml white, 2 g blue mica", "used 8 cups"])
    {
        Also = ["use", "took", "taken"],
    };
}
