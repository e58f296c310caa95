using StudioBot.Chat.Reading;
using StudioBot.Chat.Reading.Values;

namespace StudioBot.Chat.Sharing;

/// <summary><c>week</c>: the week in short.</summary>
internal sealed class WeekCommand() : Unopened(records: false)
{
    private static readonly NumberSlot Week = new(Measure.Turns, "week", "a week", "47")
    {
        TakesBare = true,
        Least = 1,
        Most = 53,
    };

    /// <inheritdoc/>
    public override CommandSheet Sheet { get; } = new(
        "week", Room.Sharing, "The week in short.",
        [Week],
        ["week", "week 47"])
    {
        Also = ["wk", "summary"],
    };
}
