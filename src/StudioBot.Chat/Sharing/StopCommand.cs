using StudioBot.Chat.Reading.Values;

namespace StudioBot.Chat.Sharing;

/// <summary><c>stop lot H-12 yellowed</c>: a lot that is not to be used any more.</summary>
internal sealed class StopCommand() : Unopened(records: true)
{
    private static readonly LotSlot Lot = new() { IsRequired = true };
    private static readonly TextSlot Why = new("a reason", "yellowed") { After = Lot };

    /// <inheritdoc/>
    public override CommandSheet Sheet { get; } = new(
        "stop", Room.Sharing, "A lot that is not to be used any more.",
        [Lot, Why],
        ["stop lot H-12 yellowed"])
    {
        Also = ["stopped"],
    };
}
