using StudioBot.Chat.Reading;
using StudioBot.Chat.Reading.Values;

namespace StudioBot.Chat.Recording;

/// <summary><c>weigh 17 318.4 g</c>: a weighing.</summary>
internal sealed class WeighCommand() : Unopened(records: true)
{
    private static readonly ChoiceSlot Bare = new("", "bare", ["bare", "empty"]);
    private static readonly WeighingsSlot Weighings = new() { IsRequired = true };

    /// <inheritdoc/>
    public override CommandSheet Sheet { get; } = new(
        "weigh", Room.Recording, "A weighing.",
        [Bare, Weighings, RecordSlots.Day],
        ["weigh 17 318.4 g", "weigh 17 bare 262.1 g"])
    {
        Also = ["weight", "weighs", "weighed", "weighing"],
    };

    /// <inheritdoc/>
    internal override IEnumerable<Meaning> AlsoUnderstood(Phrase said) => said.Has(Bare) ? [new("bare", "yes")] : [];
}
