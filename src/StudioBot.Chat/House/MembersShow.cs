namespace StudioBot.Chat.House;

/// <summary><c>members</c>: who belongs to the studio.</summary>
internal sealed class MembersShow() : Unopened(records: false)
{
    /// <inheritdoc/>
    public override CommandSheet Sheet { get; } = new(
        "members", Room.House, "Who belongs to the studio.",
        [],
        ["members"])
    {
        Also = ["member"],
    };
}
