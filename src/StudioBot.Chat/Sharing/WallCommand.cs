namespace StudioBot.Chat.Sharing;

/// <summary><c>wall</c>: the message on the wall.</summary>
internal sealed class WallCommand() : Unopened(records: true)
{
    /// <inheritdoc/>
    public override CommandSheet Sheet { get; } = new(
        "wall", Room.Sharing, "The message on the wall.",
        [],
        ["wall"]);
}
