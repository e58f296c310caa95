using StudioBot.Chat.Reading;
using StudioBot.Chat.Reading.Values;

namespace StudioBot.Chat.Recording;

/// <summary><c>pour 17 318 ml left 40 caught 55</c>: what was mixed, left and caught of a pour.</summary>
internal sealed class PourMeasured() : Unopened(records: true)
{
    private static readonly PiecesSlot Piece = new() { IsRequired = true };
    private static readonly AmountSlot Left = new("what was left", "left 40")
    {
        Lead = "left",
        Bare = Measure.Volume,
        Only = Measure.Volume,
        Key = "left",
        MayBeNothing = true,
    };
    private static readonly AmountSlot Caught = new("what was caught", "caught 55")
    {
        Lead = "caught",
        Bare = Measure.Volume,
        Only = Measure.Volume,
        Key = "caught",
        MayBeNothing = true,
    };
    private static readonly AmountSlot Mixed = new("what was mixed", "318 ml")
    {
        IsRequired = true,
        Only = Measure.Volume,
    };

    /// <inheritdoc/>
    public override CommandSheet Sheet { get; } = new(
        "pour", Room.Recording, "What was mixed, left and caught of a pour.",
        [Left, Caught, Mixed, Piece, RecordSlots.Day],
        ["pour 17 318 ml left 40 caught 55"])
    {
        Also = ["poured"],
    };
}
