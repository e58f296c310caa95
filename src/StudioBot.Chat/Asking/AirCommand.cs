using StudioBot.Chat.Reading.Values;

namespace StudioBot.Chat.Asking;

/// <summary><c>air 19C 72%</c>: whether this air suits resin, and how fast it dries.</summary>
internal sealed class AirCommand() : Unopened(records: false)
{
    private static readonly AirSlot Air = new();

    /// <inheritdoc/>
    public override CommandSheet Sheet { get; } = new(
        "air", Room.Asking, "Whether this air suits resin, and how fast it dries.",
        [Air],
        ["air 19C 72%", "air 19C 72% surface 15C", "air"])
    {
        Also = ["dew", "dewpoint"],
        Cues =
        [
            new("{temperature} {humidity}"),
            new("resin/dry/dew {temperature} {humidity}"),
        ],
    };
}
