namespace StudioBot.Chat.Sharing;

/// <summary><c>buy</c>: what to buy.</summary>
internal sealed class BuyCommand() : Unopened(records: false)
{
    /// <inheritdoc/>
    public override CommandSheet Sheet { get; } = new(
        "buy", Room.Sharing, "What to buy.",
        [],
        ["buy"])
    {
        Also = ["shopping"],
        Cues =
        [
            new("need/needs buy"),
            new("shopping list"),
            new("what/whats low"),
            new("running low"),
        ],
    };
}
