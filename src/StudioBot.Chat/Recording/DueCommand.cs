using StudioBot.Chat.Reading.Values;

namespace StudioBot.Chat.Recording;

/// <summary><c>due 21 28 june 320 for a customer</c>: a promise with a day.</summary>
internal sealed class DueCommand() : Unopened(records: true)
{
    private static readonly PiecesSlot Piece = new() { IsRequired = true };
    private static readonly WhenSlot When = new(isPast: false, "when") { IsRequired = true };
    private static readonly MoneySlot Price = new();

    /// <inheritdoc/>
    public override CommandSheet Sheet { get; } = new(
        "due", Room.Recording, "A promise with a day.",
        [When, Piece, Price],
        ["due 21 28 june 320 for a customer"])
    {
        Also = ["promised"],
        RemarksFreely = true,
    };
}
