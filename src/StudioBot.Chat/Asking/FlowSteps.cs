using StudioBot.Chat.Learning;
using StudioBot.Chat.Replies;
using StudioBot.Craft;
using StudioBot.Craft.Flow;
using StudioBot.Craft.Practice;
using StudioBot.Craft.Units;

namespace StudioBot.Chat.Asking;

/// <summary>How much more to add until a cup flows as wanted.</summary>
internal static class FlowSteps
{
    private const string Invite = "Stir, read again, tell me: a third reading narrows it.";
    private static readonly Volume Drop = UnitNames.Drop.One;
    private static readonly Volume Hundred = Volume.FromMillilitres(100);

    /// <summary>The next step after two readings.</summary>
    public static Reply Next(FlowRun run, Turn turn, Studio studio)
    {
        var found = Thinning.Next(new ThinningRun(
            run.Have!.Value,
            run.Reading(run.Before!.Value),
            run.Added!.Value,
            run.Reading(run.After!.Value),
            run.Reading(run.Want!.Value),
            Kind(run.Liquid, studio)));
        return found switch
        {
            Finding<ThinningStep>.Found(var step) => Step(run, step, null, turn, studio),
            Finding<ThinningStep>.Cautioned(var step, var caution) => Step(run, step, caution, turn, studio),
            Finding<ThinningStep>.None none => Trouble(none.Why, none.Instead, Echo(run)),
            _ => throw new InvalidOperationException($"No such finding: {found}."),
        };
    }

    /// <summary>What to try where there is one reading only.</summary>
    public static Reply First(FlowRun run, Turn turn, Studio studio)
    {
        var found = Thinning.Start(run.Reading(run.Before!.Value), run.Reading(run.Want!.Value));
        return found switch
        {
            Finding<ThinningStart>.Found(var start) => Try(run, start, turn, studio),
            Finding<ThinningStart>.Cautioned(var start, _) => Try(run, start, turn, studio),
            Finding<ThinningStart>.None none => Trouble(none.Why, none.Instead, Echo(run)),
            _ => throw new InvalidOperationException($"No such finding: {found}."),
        };
    }

    private static Reply Step(
        FlowRun run, ThinningStep step, string? caution, Turn turn, Studio studio)
    {
        var liquid = step.What == NextLiquid.FirstBack ? "of what was in it first" : $"more {run.Liquid ?? "of it"}";
        var range = step.High is { } high ? $"{Poured(step.Low)} to {Poured(high)}" : $"{Poured(step.Low)} or more";
        var there = run.Have!.Value + run.Added!.Value;
        List<Block> blocks =
        [
            new Block.Headline(step.More < Drop ? "It is there: add nothing" : $"Add {Poured(step.More)} {liquid}"),
            new Block.Figures([new Figure("Range", range), new Figure("First step", Measured(step.First, studio))]),
            new Block.Line(step.What == NextLiquid.SameAgain && ByOwn(
                run, run.After!.Value, there, run.Added!.Value / there, turn, studio) is { } own ? own : Invite),
            new Block.Line(Echo(run)),
            new Block.Line(run.Cup is { } cup
                ? $"From your two readings through the {cup.Title} curve."
                : "From your two readings; by eye a trace is good to ±30 %."),
        ];
        if (step.What == NextLiquid.FirstBack)
        {
            blocks.Insert(1, new Block.Line("You passed the target, so the first liquid goes back in."));
        }

        if (caution is not null)
        {
            blocks.Add(new Block.Caution(Sentences.Of(caution)));
        }

        return new Reply(blocks);
    }

    private static Reply Try(FlowRun run, ThinningStart start, Turn turn, Studio studio)
    {
        var liquid = start.What == AddedLiquid.Medium ? "medium" : "thinner";
        var have = run.Have ?? Hundred;
        var cup = run.Cup is { } named ? named.Name + " " : "";
        var first = Floor(have * start.Share, studio);
        var between = TimeSpan.FromSeconds(Math.Sqrt(run.Before!.Value.TotalSeconds * run.Want!.Value.TotalSeconds));
        var own = start.What == AddedLiquid.Thinner
            ? ByOwn(run with { Liquid = run.Liquid ?? liquid }, run.Before!.Value, have, 0, turn, studio)
            : null;
        return new Reply(
        [
            new Block.Headline($"Add {Measured(first, studio)} {liquid}, stir, read again"),
            .. own is null ? [] : (Block[])[new Block.Line(own)],
            new Block.Line(run.Have is null
                ? $"That is {Show.Share(start.Share)} of each 100 ml; how much is in the cup? Common practice."
                : $"That is {Show.Share(start.Share)} of what is in the cup. Common practice."),
            new Block.Line("One reading can't say how much in all. After the second, send it like this:"),
            new Block.Sample(Typed.In(
                turn,
                $"flow {cup}have {Show.Volume(have)} {Seconds(run.Before.Value)}, "
                    + $"added {Show.Volume(first)} {liquid}, now {Seconds(between)}, want {Seconds(run.Want.Value)}")),
            new Block.Line($"The {Seconds(between)} is only an example: put your own there."),
        ]);
    }

    // What the studio's own readings say of it; none where they tell nothing of this liquid.
    private static string? ByOwn(
        FlowRun run, TimeSpan reads, Volume there, double already, Turn turn, Studio studio)
    {
        if (run.Liquid is not { } liquid || Kind(liquid, studio) != AddedLiquid.Thinner)
        {
            return null;
        }

        var own = StudioFlow.Of(studio);
        return own.Learnt.Tells(liquid)
            && own.Learnt.More(run.Reading(reads), run.Reading(run.Want!.Value), there, liquid, already) is { } more
            ? $"By {own.Grounds(turn)}: {Poured(more.Middle)} {liquid}, "
                + (more.High is { } high ? $"{Poured(more.Low)} to {Poured(high)}." : $"{Poured(more.Low)} or more.")
            : null;
    }

    private static Reply Trouble(string why, string instead, string echo) =>
        new(new Block.Headline(Sentences.Of(why)), new Block.Line(instead), new Block.Line(echo)) { IsTrouble = true };

    private static string Echo(FlowRun run)
    {
        var have = run.Have is { } volume ? $"{Show.Volume(volume)} at " : "";
        var added = run.IsRun
            ? $", with {Show.Volume(run.Added!.Value)} {run.Liquid ?? "more"} {Seconds(run.After!.Value)}"
            : "";
        var at = run.At is { } warm ? $", {Show.Degrees(warm)}" : "";
        return $"Read as: {have}{Seconds(run.Before!.Value)}{added}; wanted {Seconds(run.Want!.Value)}{at}.";
    }

    /// <summary>What a syringe, a spoon or drops can measure, never more than meant.</summary>
    public static string Measured(Volume volume, Studio studio)
    {
        var drops = Math.Max(1, Math.Floor(volume / Drop));
        return volume >= studio.Practice.Pours.Tools.SyringeStep.Value
            ? Show.Volume(Floor(volume, studio))
            : Show.Number(drops, 0) + (drops > 1 ? " drops" : " drop");
    }

    /// <summary>No finer than a hand pours it.</summary>
    public static string Poured(Volume volume) =>
        Show.Number(volume.Millilitres, volume.Millilitres < 30 ? 1 : 0) + " ml";

    private static Volume Floor(Volume volume, Studio studio)
    {
        var tools = studio.Practice.Pours.Tools;
        var step = volume.Millilitres < 30 ? tools.SyringeStep.Value : tools.Spoon.Value;
        return volume < step ? volume : Math.Floor(volume / step + 1e-9) * step;
    }

    /// <summary>What a liquid does to a mixture.</summary>
    public static AddedLiquid Kind(string? liquid, Studio studio) =>
        studio.Practice.Materials.FirstOrDefault(material => material.Name == liquid)?.Kind switch
        {
            MaterialKind.Medium => AddedLiquid.Medium,
            MaterialKind.Thinner or MaterialKind.Additive or MaterialKind.Solvent => AddedLiquid.Thinner,
            _ => AddedLiquid.Unnamed,
        };

    private static string Seconds(TimeSpan time) => Show.Number(time.TotalSeconds, 2) + " s";
}
