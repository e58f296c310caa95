using StudioBot.Chat.Reading.Values;

namespace StudioBot.Chat.Sharing;

/// <summary><c>calendar</c>: a calendar file.</summary>
internal sealed class CalendarCommand() : Unopened(records: false)
{
    private static readonly PersonSlot Whose = new("member") { MayBeMe = true };

    /// <inheritdoc/>
    public override CommandSheet Sheet { get; } = new(
        "calendar", Room.Sharing, "A calendar file.",
        [Whose],
        ["calendar", "calendar mine"])
    {
        Also = ["cal"],
    };
}
