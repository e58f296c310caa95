using StudioBot.Chat.Reading;
using StudioBot.Chat.Reading.Values;

namespace StudioBot.Chat.Recording;

/// <summary><c>coat 18 failed fisheyes</c>: a coat that went wrong.</summary>
internal sealed class CoatFailed() : Unopened(records: true)
{
    private static readonly ChoiceSlot Failed = new("", "failed", ["failed", "fail"]) { IsRequired = true };
    private static readonly PiecesSlot Pieces = new() { IsRequired = true, Most = 30 };
    private static readonly TextSlot Fault = new("what is wrong", "fisheyes") { After = Failed };

    /// <inheritdoc/>
    public override CommandSheet Sheet { get; } = new(
        "coat", Room.Recording, "A coat that went wrong.",
        [Pieces, Failed, Fault, RecordSlots.Day],
        ["coat 18 failed fisheyes"]);

    /// <inheritdoc/>
    internal override IEnumerable<Meaning> AlsoUnderstood(Phrase said) => [new("failed", "yes")];
}
