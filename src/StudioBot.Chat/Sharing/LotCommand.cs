using StudioBot.Chat.Reading.Values;

namespace StudioBot.Chat.Sharing;

/// <summary><c>lot H-12</c>: where a lot went.</summary>
internal sealed class LotCommand() : Unopened(records: false)
{
    private static readonly LotSlot Lot = new() { IsRequired = true };

    /// <inheritdoc/>
    public override CommandSheet Sheet { get; } = new(
        "lot", Room.Sharing, "Where a lot went.",
        [Lot],
        ["lot H-12"])
    {
        Also = ["lots", "trace"],
        Cues =
        [
            new("what/which/where/who/how {lot}"),
        ],
    };
}
