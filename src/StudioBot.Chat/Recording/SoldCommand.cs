using StudioBot.Chat.Reading;
using StudioBot.Chat.Reading.Values;

namespace StudioBot.Chat.Recording;

/// <summary><c>sold 17 85</c>: a piece sold.</summary>
internal sealed class SoldCommand() : Unopened(records: true)
{
    private static readonly PiecesSlot Pieces = new()
    {
        IsRequired = true,
        Most = 10,
        LeavesLast = true,
        Doubts = pieces => pieces.Count > 1 ? "is one of several pieces sold for one sum" : null,
    };
    private static readonly NumberSlot Share = new(Measure.Percent, "share_pct", "a share", "40%")
    {
        Unit = "%",
        Most = 100,
    };
    private static readonly MoneySlot Price = new();

    /// <inheritdoc/>
    public override CommandSheet Sheet { get; } = new(
        "sold", Room.Recording, "A piece sold.",
        [Pieces, Price, Share, RecordSlots.Day],
        ["sold 17 85", "sold 17 85 gallery 40%"])
    {
        Also = ["sell", "sale"],
        RemarksFreely = true,
    };
}
