using StudioBot.Chat.Reading;
using StudioBot.Chat.Reading.Values;

namespace StudioBot.Chat.Recording;

/// <summary><c>mix medium 400 ml</c>: a batch of a recipe.</summary>
internal sealed class MixCommand() : Unopened(records: true)
{
    private static readonly NameSlot Recipe = new(NameKind.Recipe, "recipe", "a recipe", "medium")
    {
        IsRequired = true,
    };
    private static readonly AmountSlot Amount = new("an amount", "400 ml") { IsRequired = true };
    private static readonly CupSlot Cup = new();
    private static readonly NumberSlot Trace = new(Measure.Time, "trace_s", "a trace", "1.5 s")
    {
        Unit = "s",
        Most = 600,
    };

    /// <inheritdoc/>
    public override CommandSheet Sheet { get; } = new(
        "mix", Room.Recording, "A batch of a recipe.",
        [Recipe, Amount, Cup, Trace, RecordSlots.Day, RecordSlots.For],
        ["mix medium 400 ml"])
    {
        Also = ["mixed", "mixing"],
        Cues =
        [
            new("made/make/making/prepared/stirred {recipe} {amount}"),
        ],
    };
}
