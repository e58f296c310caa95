using StudioBot.Chat.Reading;
using StudioBot.Chat.Reading.Values;

namespace StudioBot.Chat.Asking;

/// <summary><c>flow have 15 ml 0.5s, added 5 ml medium now 1.5s, want 2s</c>: how much more to add, or a cup's viscosity.</summary>
internal sealed class FlowCommand() : Unopened(records: false)
{
    private static readonly CupSlot Cup = new();
    private static readonly NumberSlot Want = new(Measure.Time, "want_s", "the trace you want", "want 2s") { Leads = ["want", "need", "wanted", "target", "aim", "goal"], TakesBare = true, Unit = "s", Most = 600 };
    private static readonly NumberSlot After = new(Measure.Time, "now_s", "the trace now", "now 1.5s") { Leads = ["now", "reads", "then", "after", "gives"], TakesBare = true, Unit = "s", Most = 600 };
    private static readonly AmountSlot Added = new("what you added", "added 5 ml medium") { Lead = "added", Only = Measure.Volume, Key = "added" };
    private static readonly NameSlot Liquid = new(NameKind.Material, "added", "what you added", "medium") { IsStrict = false };
    private static readonly AmountSlot Have = new("what is in the cup", "have 15 ml") { Only = Measure.Volume, Key = "have" };
    private static readonly NumberSlot Before = new(Measure.Time, "have_s", "the trace it had", "0.5s") { Unit = "s", Most = 600 };
    private static readonly AirSlot Warmth = new();

    /// <inheritdoc/>
    public override CommandSheet Sheet { get; } = new(
        "flow", Room.Asking, "How much more to add, or a cup's viscosity.",
        [Cup, Want, After, Added, Liquid, Have, Before, Warmth],
        ["flow have 15 ml 0.5s, added 5 ml medium now 1.5s, want 2s", "flow ford4 22 s"])
    {
        Cues =
        [
            new("thick/thin/runny want/need {amount} {time}"),
            new("trace/stiff/thick/thin {time} want/need"),
            new("{cup} {time}"),
        ],
    };
}
