using StudioBot.Chat.Reading.Values;

namespace StudioBot.Chat.Recording;

/// <summary><c>piece 17</c>: the record of a piece.</summary>
internal sealed class PieceCommand() : Unopened(records: false)
{
    private static readonly PiecesSlot Piece = new() { IsRequired = true };

    /// <inheritdoc/>
    public override CommandSheet Sheet { get; } = new(
        "piece", Room.Recording, "The record of a piece.",
        [Piece],
        ["piece 17", "17 dry?"])
    {
        Also = ["card"],
        Cues =
        [
            new("is/can/should/how/when/did/has/was {number} dry/coat/ready/done/finished/cured/old/yet"),
        ],
    };
}
