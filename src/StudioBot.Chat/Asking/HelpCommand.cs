using StudioBot.Chat.Reading.Values;

namespace StudioBot.Chat.Asking;

/// <summary><c>help</c>: what you can send.</summary>
internal sealed class HelpCommand() : Unopened(records: false)
{
    private static readonly HelpTopicSlot Topic = new();

    /// <inheritdoc/>
    public override CommandSheet Sheet { get; } = new(
        "help", Room.Asking, "What you can send.",
        [Topic],
        ["help", "help resin"])
    {
        Also = ["start", "commands", "menu", "hello", "hi", "hey"],
    };
}
