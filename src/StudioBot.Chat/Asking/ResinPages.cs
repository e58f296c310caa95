using StudioBot.Chat.Replies;
using StudioBot.Craft;
using StudioBot.Craft.Air;
using StudioBot.Craft.Coats;
using StudioBot.Craft.Practice;
using StudioBot.Records.Pieces;

namespace StudioBot.Chat.Asking;

/// <summary>What a resin answer shows: the amounts, the cups behind a button, how it was worked out behind another.</summary>
internal static class ResinPages
{
    /// <summary>Total, parts, cups, working time and whether the air suits it.</summary>
    public static Reply Amounts(ResinJob job, IReadOnlyList<Piece> pieces, Studio studio, string line)
    {
        var parts = job.Parts;
        List<Block> blocks =
        [
            new Block.Headline($"{Show.Volume(job.Need.Total)} = {Show.OnScale(parts.Mass)}"
                + (job.Coats > 1 ? $" for {job.Coats} coats" : " of resin")),
            new Block.Figures(
            [
                new Figure("Part A", $"{Show.Volume(parts.PartA.Volume)}  {Show.OnScale(parts.PartA.Mass)}"),
                new Figure("Part B", $"{Show.Volume(parts.PartB.Volume)}  {Show.OnScale(parts.PartB.Mass)}"),
            ]),
            new Block.Line($"{Count(job.Cups.Cups)}{(job.Coats > 1 ? " a coat" : "")}: {Readings(job.Cups)}"),
            new Block.Line(Grounded(job)),
            new Block.Line(Room(job)),
        ];
        blocks.AddRange(Warnings(job, pieces));
        blocks.Add(Cautions.InShort(studio, SafetySubject.ResinSkin, SafetySubject.ResinAir));
        return new Reply(blocks, [new Button("Cups and heat", $"{line} cups"), new Button("How worked out", $"{line} grounds")]);
    }

    /// <summary>One cup at a time, with what may heat up.</summary>
    public static Reply Cups(ResinJob job, Studio studio, string line)
    {
        var (plan, potLife) = (job.Cups, job.System.PotLife.Value);
        var each = plan.EachCup;
        List<Block> blocks =
        [
            new Block.Headline($"{Count(plan.Cups)}{(job.Coats > 1 ? " a coat" : "")}, {Show.Volume(each.Volume)} each"),
            new Block.Figures(
            [
                new Figure("A", $"{Show.Volume(each.PartA.Volume)}  to {Show.OnScale(plan.ScaleAfterA)}"),
                new Figure("then B", $"{Show.Volume(each.PartB.Volume)}  to {Show.OnScale(plan.ScaleAfterB)}"),
            ]),
            new Block.Line($"Scale zeroed with the empty cup. At most {Show.Volume(job.System.Cups.Value.In(job.Air.Temperature))} a cup; "
                + $"{Show.Time(potLife.Time)} for {Show.Mass(potLife.Sample)} at {Show.Degrees(potLife.At)}, less for more."),
        ];
        if (Time(job.Working) is { } time && plan.MixOneByOne(TimeSpan.Zero, time.Likely))
        {
            blocks.Add(new Block.Line("Mix the next cup when the last is poured."));
        }

        blocks.Add(Cautions.About(studio, SafetySubject.CupHeat));
        return new Reply(blocks, [new Button("Back to the amounts", line)]);
    }

    /// <summary>Film, run-off, densities and times, each with its grounds.</summary>
    public static Reply Grounds(ResinJob job, Studio studio, string line)
    {
        List<Figure> rows = [];
        if (job.Film is { } film)
        {
            rows.Add(new Figure($"Faces, {Show.Film(film)}", Show.Volume(job.Need.OnFaces)));
            if (job.Need.OnSides.Millilitres > 0)
            {
                rows.Add(new Figure($"Sides, {Show.Film(job.System.SideFilm.Value)}", Show.Volume(job.Need.OnSides)));
            }

            rows.Add(new Figure($"Runs off, {Show.Share(job.System.RunOff.Value.Usual)}", Show.Volume(job.Need.RunOff)));
        }

        rows.Add(new Figure("A, B in g/ml", $"{Show.Number(job.Resin.PartA.GramsPerMillilitre, 2)}, {Show.Number(job.Resin.PartB.GramsPerMillilitre, 2)}"));
        rows.Add(new Figure("B to 100 A by weight", Show.Number(job.Resin.MassOfBPer100A)));
        if (Time(job.Working) is { } time)
        {
            rows.Add(new Figure("Flows", $"{Show.Number(time.Shortest.TotalMinutes, 0)} to {Show.Time(time.Longest)}"));
        }

        return new Reply(
            [
                new Block.Headline($"{job.Ratio}, and how"),
                new Block.Figures(rows),
                new Block.Line($"Densities {job.DensitiesFrom}.{(studio.IsSample ? " (Invented studio.)" : "")} Film and run-off: common practice."),
                new Block.Line($"Flows {Show.Time(job.System.WorkingTime.Value)} at {Show.Degrees(job.System.TimesAt.Value)}, {job.System.WorkingTime.Provenance.Words}; your sheet comes first."),
            ],
            [new Button("Back to the amounts", line)]);
    }

    private static string Count(int cups) => cups == 1 ? "1 cup" : $"{cups} cups";

    private static string Readings(CupPlan plan) => $"A to {Show.OnScale(plan.ScaleAfterA)}, then B to {Show.OnScale(plan.ScaleAfterB)}";

    private static string Grounded(ResinJob job)
    {
        var taken = job.Taken.Count > 0 ? $" Taken: {string.Join(", ", job.Taken)}." : "";
        if (job.Film is not { } film)
        {
            return $"{job.Need.What} at {job.Ratio}, no run-off added.{taken}";
        }

        var sides = job.Need.OnSides.Millilitres > 0 ? $"{Show.Film(job.System.SideFilm.Value)} sides {Show.Volume(job.Need.OnSides)}, " : "";
        return $"{job.Need.What}: {Show.Film(film)} film {Show.Volume(job.Need.OnFaces)}, {sides}"
            + $"run-off {Show.Share(job.System.RunOff.Value.Usual)} {Show.Volume(job.Need.RunOff)}.{taken}";
    }

    private static string Room(ResinJob job)
    {
        var flows = Time(job.Working) is { } time ? $"flows {Show.Time(time.Likely)}" : "no working time";
        var air = job.Verdict is { } verdict
            ? $"{AirWording.Answer(verdict.Answer)}{(verdict.Now is { } now ? $", dew point {Show.Number(now.Degrees)} °C off" : "")}"
            : "say the humidity too";
        return $"{job.Air.Words} ({job.Air.Grounds}): {flows}; air {air}.";
    }

    private static IEnumerable<Block> Warnings(ResinJob job, IReadOnlyList<Piece> pieces)
    {
        var wet = pieces.Where(piece => piece.Stage == Stage.Drying).Select(piece => piece.Number).ToList();
        var gone = pieces.Where(piece => piece.Stage is Stage.Kept or Stage.Sold or Stage.Bin).Select(piece => piece.Number).ToList();
        if (wet.Count > 0)
        {
            yield return new Block.Caution($"Still drying: {string.Join(", ", wet)}. Not yet.");
        }

        if (gone.Count > 0)
        {
            yield return new Block.Caution($"Kept, sold or binned: {string.Join(", ", gone)}.");
        }

        if (job.Verdict is { Answer: ResinAnswer.No } no)
        {
            yield return new Block.Caution(no.Cheapest is { } way ? $"First {AirWording.Way(way)}." : $"Not in this air: {AirWording.Reason(no.Reasons[0])}.");
        }

        if (Mind(job.Working) is { } mind)
        {
            yield return new Block.Caution(mind + ".");
        }

        if (job.Need.Caution is { } film)
        {
            yield return new Block.Caution(film + ".");
        }
    }

    private static WorkingTime? Time(Finding<WorkingTime> finding) => finding switch
    {
        Finding<WorkingTime>.Found found => found.Value,
        Finding<WorkingTime>.Cautioned cautioned => cautioned.Value,
        _ => null,
    };

    private static string? Mind(Finding<WorkingTime> finding) => finding switch
    {
        Finding<WorkingTime>.Cautioned cautioned => cautioned.Caution,
        Finding<WorkingTime>.None none => $"{none.Why}: {none.Instead}",
        _ => null,
    };
}
