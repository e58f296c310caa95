using StudioBot.Chat.Reading;
using StudioBot.Chat.Reading.Values;
using StudioBot.Chat.Replies;
using StudioBot.Craft.Flow;
using StudioBot.Craft.Units;
using StudioBot.Records.Materials;

namespace StudioBot.Chat.Asking;

/// <summary><c>flow have 15 ml 0.5s, added 5 ml medium now 1.5s, want 2s</c>: how much more to add, or a cup's
/// viscosity.</summary>
internal sealed class FlowCommand : Ask
{
    private static readonly BatchSlot Batch = new();
    private static readonly CupSlot Cup = new();
    private static readonly NumberSlot Want = new(Measure.Time, "want_s", "the trace you want", "want 2s")
    {
        Leads = WishWords.All,
        TakesBare = true,
        Unit = "s",
        Least = 0.01,
        Most = 600,
    };

    private static readonly CupSlot WantCup = new() { Leads = WishWords.All };
    private static readonly NumberSlot WantTrace =
        new(Measure.Time, "want_trace_s", "the trace you want", "want trace 2s")
        {
            Leads = WishWords.All,
            Behind = "trace",
            TakesBare = true,
            Unit = "s",
            Least = 0.01,
            Most = 600,
        };

    private static readonly NumberSlot After = new(Measure.Time, "now_s", "the trace now", "now 1.5s")
    {
        Leads = ["now", "reads", "then", "after", "gives"],
        TakesBare = true,
        Unit = "s",
        Least = 0.01,
        Most = 600,
    };

    private static readonly AmountSlot Added =
        new("what you added", "added 5 ml medium") { Lead = "added", Only = Measure.Volume, Key = "added" };
    private static readonly ChoiceSlot Detail = new("", "a detail", new Dictionary<string, string>
    {
        ["elsewhere"] = "elsewhere",
    });

    private static readonly NameSlot Liquid = new(NameKind.Material, "added", "what you added", "medium")
    {
        IsStrict = false,
    };

    private static readonly AmountSlot Have =
        new("what is in the cup", "have 15 ml") { Only = Measure.Volume, Key = "have" };
    private static readonly NumberSlot Before = new(Measure.Time, "have_s", "the trace it had", "0.5s")
    {
        Unit = "s",
        Least = 0.01,
        Most = 600,
    };

    private static readonly AirSlot Warmth = new();

    /// <inheritdoc/>
    public override CommandSheet Sheet { get; } = new(
        "flow", Room.Asking, "How much more to add, or a cup's viscosity.",
        [Batch, WantCup, WantTrace, Cup, Want, After, Added, Detail, Liquid, Have, Before, Warmth],
        [
            "flow have 15 ml 0.5s, added 5 ml medium now 1.5s, want 2s",
            "flow ford4 22 s",
            "flow 2.5s in 200 ml, want 1s",
        ])
    {
        More = "For a batch by what your own readings say of its thinner: flow batch 14 want 24 s.",
        Cues =
        [
            new("thick/thin/runny want/need {amount} {time}"),
            new("trace/stiff/thick/thin {time} want/need"),
            new("{cup} {time}"),
        ],
    };

    /// <inheritdoc/>
    internal override Misread? Check(Phrase said) =>
        said.Has(Cup) && said.Has(WantCup) && said.Of(Cup).Cup != said.Of(WantCup).Cup
            ? new Misread(
                said.Of(WantCup).Cup,
                "is another cup: one question is read in one cup",
                "flow ford4 40 s in 200 ml, want 24 s")
            : said.Has(Batch) ? FlowCheck.OfBatch(said.Of(Batch), Run(said)) : FlowCheck.Of(Run(said));

    /// <inheritdoc/>
    internal override Reply Answer(Phrase said, Turn turn, Studio studio)
    {
        var run = Run(said);
        return run switch
        {
            _ when said.Has(Batch) => FlowBatch.Of(said.Of(Batch), run, turn, studio),
            { IsRun: true } => FlowSteps.Next(run, turn, studio),
            { Want: not null } => FlowSteps.First(run, turn, studio),
            _ when said.Has(Detail) => CupViscosity.Elsewhere(run.Cup!, run.Before!.Value),
            _ => CupViscosity.Of(run, said, studio),
        };
    }

    // Seconds beside the cup's name are the first reading that has none of its own.
    private static FlowRun Run(Phrase said)
    {
        var cup = said.Has(Cup) ? said.Of(Cup) : null;
        var (before, after) = (Time(said, Before), Time(said, After));
        (before, after) = (before ?? cup?.Time, after ?? (before is null ? null : cup?.Time));
        var isOne = before is null && after is not null && !said.Has(Added);
        var wish = said.Has(WantCup) ? said.Of(WantCup) : null;
        var named = cup?.Cup ?? wish?.Cup;
        return new FlowRun(
            named is null ? null : CupCurves.Find(named),
            isOne ? after : before,
            isOne ? null : after,
            Time(said, Want) ?? wish?.Time ?? Time(said, WantTrace),
            Poured(said, Have),
            Poured(said, Added),
            said.Has(Liquid) ? said.Of(Liquid) : null,
            said.Has(Warmth) ? said.Of(Warmth).Air : null)
        {
            WantsTrace = said.Has(WantTrace),
        };
    }

    private static TimeSpan? Time(Phrase said, NumberSlot slot) =>
        said.Has(slot) ? TimeSpan.FromSeconds(said.Of(slot)) : null;

    private static Volume? Poured(Phrase said, AmountSlot slot) =>
        said.Has(slot) && said.Of(slot) is Amount.ByVolume volume ? volume.Volume : null;
}
