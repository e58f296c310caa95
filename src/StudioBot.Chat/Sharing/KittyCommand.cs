namespace StudioBot.Chat.Sharing;

/// <summary><c>kitty</c>: what is in the kitty.</summary>
internal sealed class KittyCommand() : Unopened(records: false)
{
    /// <inheritdoc/>
    public override CommandSheet Sheet { get; } = new(
        "kitty", Room.Sharing, "What is in the kitty.",
        [],
        ["kitty"]);
}
