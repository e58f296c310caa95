using StudioBot.Chat.Reading;
using StudioBot.Chat.Replies;
using StudioBot.Craft;
using StudioBot.Craft.Flow;
using StudioBot.Craft.Units;

namespace StudioBot.Chat.Asking;

/// <summary>What a flow message lacks, and seconds that its cup can't tell.</summary>
internal static class FlowCheck
{
    private const string Run = "flow have 15 ml 0.5s, added 5 ml medium now 1.5s, want 2s";

    /// <summary>What is wrong with it; none where it can be answered.</summary>
    public static Misread? Of(FlowRun run) => OutOfRange(run) ?? (run.IsRun ? OfRun(run) : OfOne(run));

    /// <summary>What is wrong with a question about a batch; none where it can be answered.</summary>
    public static Misread? OfBatch(int batch, FlowRun run) => OutOfRange(run) ?? run switch
    {
        { Want: null } => new Misread("", "the reading you want is missing", $"flow batch {batch} want 22 s"),
        { Before: not null } or { After: not null } => new Misread(
            "", "a reading of a batch is recorded first", $"batch {batch} ford4 22 s"),
        _ => null,
    };

    private static Misread? OutOfRange(FlowRun run)
    {
        foreach (var time in new[] { run.Before, run.After, run.Want }.OfType<TimeSpan>())
        {
            if (run.Cup is { } cup && OutOfRange(cup, time, "flow") is { } wrong)
            {
                return wrong;
            }
        }

        return null;
    }

    /// <summary>What is wrong with seconds that their cup can't tell; none where it can.</summary>
    /// <param name="cup">The cup.</param>
    /// <param name="time">Its seconds.</param>
    /// <param name="before">What stands before the cup in a line that works.</param>
    public static Misread? OutOfRange(FlowCup cup, TimeSpan time, string before)
    {
        if (CupCurves.Viscosity(cup, time) is not Finding<KinematicViscosity>.None)
        {
            return null;
        }

        var tooShort = time < cup.Times.AtLeast;
        var limit = tooShort ? cup.Times.AtLeast : cup.Times.AtMost;
        var why = $"is {(tooShort ? "under" : "over")} the {Seconds(limit)} that the {cup.Title} cup can tell";
        return CupCurves.Instead(cup, time) is { } other
            ? new Misread(
                Seconds(time),
                $"{why}: take the {other.Cup.Title} cup",
                $"{before} {other.Cup.Name} {Seconds(Whole(other.Time ?? other.Cup.Times.From))}")
            : new Misread(
                Seconds(time),
                $"{why}: take a {(tooShort ? "smaller" : "larger")} hole",
                $"{before} {cup.Name} {Seconds(limit)}");
    }

    private static Misread? OfRun(FlowRun run) => run switch
    {
        { Before: null } => Missing("the reading before is missing"),
        { Added: null } => Missing("what was added between the readings is missing"),
        { After: null } => Missing("the reading after it is missing"),
        { Have: null } => Missing("what was in the cup at first is missing"),
        { Want: null } => Missing("the reading you want is missing"),
        _ => null,
    };

    private static Misread? OfOne(FlowRun run) => run switch
    {
        { Before: null, Cup: { } cup } => new Misread(
            "",
            "the cup's seconds are missing",
            $"flow {cup.Name} {Seconds(cup.Times.From)}"),
        { Before: null } => Missing("a reading is missing"),
        { Want: null, Cup: null } => new Misread(
            "",
            "the trace you want is missing",
            $"flow {Seconds(run.Before.Value)} want {Seconds(run.Before.Value * 2)}"),
        _ => null,
    };

    private static Misread Missing(string why) => new("", why, Run);

    private static TimeSpan Whole(TimeSpan time) => TimeSpan.FromSeconds(Math.Round(time.TotalSeconds));

    private static string Seconds(TimeSpan time) => Show.Number(time.TotalSeconds, 2) + " s";
}
