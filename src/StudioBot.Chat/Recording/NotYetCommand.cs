using StudioBot.Chat.Reading.Values;

namespace StudioBot.Chat.Recording;

/// <summary><c>notyet 17 2 days</c>: a piece that is not dry yet.</summary>
internal sealed class NotYetCommand() : Unopened(records: true)
{
    private static readonly DurationSlot Wait = new() { InDays = true };
    private static readonly PiecesSlot Pieces = new() { IsRequired = true, Most = 30 };

    /// <inheritdoc/>
    public override CommandSheet Sheet { get; } = new(
        "notyet", Room.Recording, "A piece that is not dry yet.",
        [Wait, Pieces, RecordSlots.Day],
        ["notyet 17 2 days"])
    {
        Also = ["not yet", "not dry"],
        Cues =
        [
            new("still soft/wet/tacky/damp/cool/cold/sticky {number}"),
            new("not dry {number}"),
            new("needs/need/give/wait/more {number} {time}"),
        ],
    };
}
