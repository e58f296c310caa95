namespace StudioBot.Chat.House;

/// <summary><c>leave</c>: leaves the studio.</summary>
internal sealed class LeaveCommand() : Unopened(records: true)
{
    /// <inheritdoc/>
    public override CommandSheet Sheet { get; } = new(
        "leave", Room.House, "Leaves the studio.",
        [],
        ["leave"]);
}
