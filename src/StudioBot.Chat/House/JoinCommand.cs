using StudioBot.Chat.Reading.Values;

namespace StudioBot.Chat.House;

/// <summary><c>join ABC123</c>: joins the studio.</summary>
internal sealed class JoinCommand() : Unopened(records: true)
{
    private static readonly CodeSlot Code = new() { IsRequired = true };

    /// <inheritdoc/>
    public override CommandSheet Sheet { get; } = new(
        "join", Room.House, "Joins the studio.",
        [Code],
        ["join ABC123"]);
}
