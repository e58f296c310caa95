using StudioBot.Chat.Learning;
using StudioBot.Chat.Recording;
using StudioBot.Chat.Replies;
using StudioBot.Craft;
using StudioBot.Craft.Flow;
using StudioBot.Craft.Units;
using StudioBot.Records.Materials;

namespace StudioBot.Chat.Asking;

/// <summary><c>flow batch 14 want 22 s</c>: how much to put into a batch, by this studio's own readings.</summary>
internal static class FlowBatch
{
    /// <summary>It, or what is missing for it.</summary>
    public static Reply Of(int number, FlowRun run, Turn turn, Studio studio)
    {
        if (IsGone(number, studio))
        {
            return Trouble($"Nothing is left of batch {number}", turn, $"batch {number}");
        }

        var own = StudioFlow.Of(studio, number);
        if (own.Last(number) is not { } last)
        {
            return Trouble($"No reading of batch {number} is on record", turn, $"batch {number} ford4 22 s");
        }

        var air = run.At ?? RoomNow.Of(studio.View.Rooms, turn.Now);
        var at = air ?? OwnFlow.Reference;
        var wanted = Wanted(run, last.Reading, at);
        if (own.Now(number, wanted) is not { } now)
        {
            return Trouble(
                $"What is in batch {number} is not on record",
                turn,
                $"flow {FlowTold.Typed(last.Reading)} in 200 ml, "
                    + $"want {Show.Number(run.Want!.Value.TotalSeconds, 2)} s");
        }

        var there = run.Have ?? Left(number, studio);
        var thinner = run.Liquid is { } named && FlowSteps.Kind(named, studio) == AddedLiquid.Thinner
            ? named
            : own.ThinnerOf(now);
        var found = own.Learnt.More(now, there, thinner);
        var liquid = thinner;
        if (found is Finding<ThinningStep>.None { Kind: NoFigure.WrongDirection })
        {
            (found, liquid) = (own.Learnt.More(now, there, null), Thicker(last.Recipe, studio));
        }

        return found is Finding<ThinningStep>.Found(var step)
            ? Step(number, there, step, liquid, wanted, air is null, own, thinner, turn, studio)
            : Trouble(Why(found), turn, $"batch {number} {FlowTold.Typed(last.Reading)}");
    }

    private static Reply Step(
        int number,
        Volume there,
        ThinningStep step,
        string liquid,
        FlowReading wanted,
        bool isAssumed,
        StudioFlow own,
        string thinner,
        Turn turn,
        Studio studio)
    {
        var range = step.High is { } high
            ? $"{FlowSteps.Poured(step.Low)} to {FlowSteps.Poured(high)}"
            : $"{FlowSteps.Poured(step.Low)} or more";
        var isThere = step.More < UnitNames.Drop.One;
        List<Block> blocks =
        [
            new Block.Headline(isThere ? "It is there: add nothing" : $"Add {FlowSteps.Poured(step.More)} {liquid}"),
            new Block.Figures(
            [
                new Figure("Range", range),
                .. isThere ? [] : (Figure[])[new Figure("First step", FlowSteps.Measured(step.First, studio))],
            ]),
            new Block.Line(
                $"Batch {number}, {Show.Volume(there)}, to {FlowTold.Words(wanted)}{(isAssumed ? " (assumed)" : "")}."
                + Sentences.Invented(studio)),
            new Block.Line(own.Says(thinner, turn)),
        ];
        if (own.LeftOut.Length > 0)
        {
            blocks.Add(new Block.Line(own.LeftOut));
        }

        blocks.Add(new Block.Line("Stir, read it again and tell me: the next is surer."));
        return new Reply(blocks);
    }

    // In the cup of the last reading unless another is named, or a trace where that was one.
    private static FlowReading Wanted(FlowRun run, FlowReading last, Temperature? at) =>
        !run.WantsTrace && (run.Cup ?? (last as FlowReading.OfCup)?.Cup) is { } cup
            ? new FlowReading.OfCup(cup, run.Want!.Value, at)
            : new FlowReading.OfTrace(new Trace(run.Want!.Value), at);

    // Used up or binned; what stands in no stock of its own may still be there.
    private static bool IsGone(int number, Studio studio) =>
        studio.View.Batches.Find(number)!.LotId is { } id
        && studio.View.Lots.Find(id) is { } lot
        && Need.UnitsOf(lot.Left) == 0;

    private static Volume Left(int number, Studio studio)
    {
        var batch = studio.View.Batches.Find(number)!;
        return batch.LotId is { } id && studio.View.Lots.Find(id)?.Left is Amount.ByVolume { Volume: var left }
            ? left
            : batch.Made;
    }

    // What makes it thicker: most of its recipe.
    private static string Thicker(string recipe, Studio studio) => studio.View.Recipes.All()
        .First(one => one.Name == recipe).Parts
        .Where(part => part.Amount is Amount.ByVolume && FlowSteps.Kind(part.Material, studio) != AddedLiquid.Thinner)
        .OrderByDescending(part => Need.UnitsOf(part.Amount))
        .Select(part => part.Material)
        .FirstOrDefault() ?? "of what was in it first";

    private static string Why(Finding<ThinningStep> found) =>
        Sentences.Capital(((Finding<ThinningStep>.None)found).Why);

    private static Reply Trouble(string why, Turn turn, string works) => new(
        new Block.Headline($"No figure: {char.ToLowerInvariant(why[0])}{why[1..]}."),
        new Block.Line("Try"),
        new Block.Sample(Typed.In(turn, works)))
    {
        IsTrouble = true,
    };
}
