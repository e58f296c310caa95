using StudioBot.Chat.Reading.Values;

namespace StudioBot.Chat.Recording;

/// <summary><c>bin 17 cracked</c>: a piece given up.</summary>
internal sealed class BinCommand() : Unopened(records: true)
{
    private static readonly PiecesSlot Piece = new() { IsRequired = true, Most = 30 };
    private static readonly TextSlot Why = new("a reason", "cracked") { After = Piece };

    /// <inheritdoc/>
    public override CommandSheet Sheet { get; } = new(
        "bin", Room.Recording, "A piece given up.",
        [Piece, Why],
        ["bin 17 cracked"])
    {
        Also = ["binned"],
        Cues =
        [
            new("ruined/destroyed/broken/broke/smashed/dropped {number}"),
        ],
    };
}
