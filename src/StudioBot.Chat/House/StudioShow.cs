using StudioBot.Chat.Reading.Values;

namespace StudioBot.Chat.House;

/// <summary><c>studio</c>: what the studio has set, and how the bot is.</summary>
internal sealed class StudioShow() : Unopened(records: false)
{
    private static readonly ChoiceSlot Topic = new("", "a topic", ["health"]);

    /// <inheritdoc/>
    public override CommandSheet Sheet { get; } = new(
        "studio", Room.House, "What the studio has set, and how the bot is.",
        [Topic],
        ["studio", "health"])
    {
        Also = ["health", "status"],
    };
}
