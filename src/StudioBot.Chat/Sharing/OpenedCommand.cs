using StudioBot.Chat.Reading.Values;

namespace StudioBot.Chat.Sharing;

/// <summary><c>opened H-12</c>: a lot that was opened.</summary>
internal sealed class OpenedCommand() : Unopened(records: true)
{
    private static readonly LotSlot Lot = new() { IsRequired = true };

    /// <inheritdoc/>
    public override CommandSheet Sheet { get; } = new(
        "opened", Room.Sharing, "A lot that was opened.",
        [Lot, RecordSlots.Day],
        ["opened H-12"])
    {
        Also = ["open"],
    };
}
