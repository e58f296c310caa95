namespace StudioBot.Chat.House;

/// <summary><c>me</c>: what you have set.</summary>
internal sealed class MeShow() : Unopened(records: false)
{
    /// <inheritdoc/>
    public override CommandSheet Sheet { get; } = new(
        "me", Room.House, "What you have set.",
        [],
        ["me"])
    {
        Also = ["settings"],
    };
}
