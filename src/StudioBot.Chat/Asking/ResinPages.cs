using StudioBot.Chat.Coats;
using StudioBot.Chat.Recording;
using StudioBot.Chat.Replies;
using StudioBot.Craft.Coats;
using StudioBot.Craft.Practice;
using StudioBot.Records.Pieces;

namespace StudioBot.Chat.Asking;

/// <summary>
/// What a resin answer shows: the amounts, the cups behind a button, how it was worked out behind another.
/// </summary>
internal static class ResinPages
{
    /// <summary>Total, parts, cups, working time and whether the air suits it.</summary>
    public static Reply Amounts(ResinJob job, IReadOnlyList<Piece> pieces, Studio studio, string line)
    {
        var whole = Amounts(job, pieces, studio, line, job.Need.What + ": ");
        return LineBudget.Of(whole) <= LineBudget.Lines ? whole : Amounts(job, pieces, studio, line, "");
    }

    /// <summary>One cup at a time, with what may heat up.</summary>
    public static Reply Cups(ResinJob job, Studio studio, string line)
    {
        var (plan, potLife) = (job.Cups, job.System.PotLife.Value);
        var each = plan.EachCup;
        List<Block> blocks =
        [
            new Block.Headline($"{Count(plan.Cups)}{(job.Coats > 1 ? " a coat" : "")} of {Show.Volume(each.Volume)}"),
            new Block.Figures(
            [
                new Figure("A", $"{Show.Volume(each.PartA.Volume)}  to {Show.OnScale(plan.ScaleAfterA)}"),
                new Figure("then B", $"{Show.Volume(each.PartB.Volume)}  to {Show.OnScale(plan.ScaleAfterB)}"),
            ]),
            new Block.Line("Scale zeroed with the empty cup. "
                + $"At most {Show.Volume(job.System.Cups.Value.In(job.Air.Temperature))} a cup; "
                + $"{Show.Time(potLife.Time * job.Gel.Shortened)} for {Show.Mass(potLife.Sample)} at "
                + $"{Show.Degrees(potLife.At)}{Own(job.Gel)}, less for more."),
        ];
        if (ResinWarnings.Time(job.Working) is { } time && plan.MixOneByOne(TimeSpan.Zero, time.Likely))
        {
            blocks.Add(new Block.Line("Mix the next cup when the last is poured."));
        }

        blocks.Add(Cautions.About(studio, SafetySubject.CupHeat));
        return new Reply(blocks, [new Button("Back to the amounts", line)]);
    }

    /// <summary>How long it flows by when it gelled here, beside the sheet, which stays the most.</summary>
    public static Reply Gels(ResinJob job, string line)
    {
        List<Block> blocks =
        [
            new Block.Headline(ResinWarnings.Time(job.Working) is { } time
                ? $"Flows {Show.Time(time.Likely)} at {Show.Degrees(job.Air.Temperature)}"
                : "Too cold: nobody can say how long"),
            new Block.Line(GelTold.Times(job.Gel)),
        ];
        if (job.Gel.Reports > 0 && ResinWarnings.Time(job.Working) is { } likely)
        {
            var (early, late) = job.Gel.Between(likely.Likely / job.Gel.Shortened);
            blocks.Add(new Block.Line(
                $"Four of five gel between {Show.Time(early)} and {Show.Time(late)}: plan by "
                + (early < likely.Likely ? "the first." : $"the sheet's {Show.Time(likely.Likely)}.")));
        }

        if (StudioGels.Trend(job.Gel) is { Length: > 0 } trend)
        {
            blocks.Add(new Block.Line(trend));
        }

        if (job.GelSlips.Length > 0)
        {
            blocks.Add(new Block.Line($"Left out, three times off the sheet or more: {job.GelSlips}."));
        }

        blocks.Add(new Block.Line("The product's sheet comes first."));
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

            rows.Add(
                new Figure($"Runs off, {Show.Share(job.System.RunOff.Value.Usual)}", Show.Volume(job.Need.RunOff)));
        }

        var (a, b) = (job.Resin.PartA.GramsPerMillilitre, job.Resin.PartB.GramsPerMillilitre);
        rows.Add(new Figure("A, B in g/ml", $"{Show.Number(a, 2)}, {Show.Number(b, 2)}"));
        rows.Add(new Figure("B to 100 g A", Show.Number(job.Resin.MassOfBPer100A) + " g"));
        if (ResinWarnings.Time(job.Working) is { } time)
        {
            rows.Add(
                new Figure(
                    "Flows",
                    $"{Show.Number(time.Shortest.TotalMinutes)} to {Show.Number(time.Longest.TotalMinutes)} min"));
        }

        return new Reply(
            [
                new Block.Headline(job.Need.What),
                new Block.Figures(rows),
                new Block.Line($"{job.Ratio}; densities {job.DensitiesFrom}; film, run-off common practice; "
                    + $"{Show.Time(job.System.WorkingTime.Value)} at {Show.Degrees(job.System.TimesAt.Value)} "
                    + $"{job.System.WorkingTime.Provenance.Words}: your sheet comes first."
                    + (studio.IsSample ? " (Invented studio.)" : "")),
            ],
            [new Button("Back to the amounts", line)]);
    }

    private static Reply Amounts(
        ResinJob job, IReadOnlyList<Piece> pieces, Studio studio, string line, string what)
    {
        var parts = job.Parts;
        List<Block> blocks =
        [
            new Block.Headline($"{Show.Volume(job.Need.Total)} = {Show.OnScale(parts.Mass)}"
                + (job.Coats > 1 ? $" for {job.Coats} coats" : " of resin")),
            new Block.Figures([new Figure("Part A", Both(parts.PartA)), new Figure("Part B", Both(parts.PartB))]),
            new Block.Line($"{Count(job.Cups.Cups)}{(job.Coats > 1 ? " a coat" : "")}: {Readings(job.Cups)}"),
            new Block.Line(Grounded(job, what) + (studio.IsSample ? " (Invented studio.)" : "")),
            new Block.Line(Room(job)),
            .. ResinWarnings.Of(job, pieces),
            Cautions.InShort(studio, SafetySubject.ResinSkin, SafetySubject.ResinAir),
        ];
        List<Button> buttons = [new("Cups and heat", $"{line} cups"), new("How worked out", $"{line} grounds")];
        if (job.Gel.Reports > 0 || job.GelSlips.Length > 0)
        {
            buttons.Add(new Button("By own gels", $"{line} gels"));
        }

        if (!job.Air.IsSaid)
        {
            buttons.Add(new Button("The air", "air"));
        }

        return new Reply(blocks, buttons);
    }

    private static string Both(ResinPart part) => $"{Show.Volume(part.Volume)} {Show.OnScale(part.Mass),9}";

    private static string Count(int cups) => cups == 1 ? "1 cup" : $"{cups} cups";

    private static string Readings(CupPlan plan) =>
        $"A to {Show.OnScale(plan.ScaleAfterA)}, then B to {Show.OnScale(plan.ScaleAfterB)}";

    private static string Grounded(ResinJob job, string what)
    {
        if (job.Film is not { } film)
        {
            return $"{job.Need.What} at {job.Ratio}{(job.Taken.Count > 0 ? ", taken" : "")}; no run-off added.";
        }

        var isShort = what.Length == 0;
        var sideFilm = isShort ? "" : Show.Film(job.System.SideFilm.Value) + " ";
        var sides = job.Need.OnSides.Millilitres > 0 ? $"{sideFilm}sides {Show.Volume(job.Need.OnSides)}, " : "";
        var share = isShort ? "" : Show.Share(job.System.RunOff.Value.Usual) + " ";
        return $"{what}{Show.Film(film)} film {Show.Volume(job.Need.OnFaces)}, "
            + $"{sides}run-off {share}{Show.Volume(job.Need.RunOff)}."
            + (job.Taken.Count > 0 ? $" Taken: {(isShort ? Brief(job) : string.Join(", ", job.Taken))}." : "");
    }

    // The table has both measures: what the ratio goes by can be left to the grounds.
    private static string Brief(ResinJob job) => string.Join(", ", job.Taken.Select(taken => taken.Split(" by ")[0]));

    private static string Room(ResinJob job)
    {
        var where = job.Air.IsSaid ? $"At {job.Air.Words}" : $"{job.Air.Words}, {job.Air.Grounds}";
        if (ResinWarnings.Time(job.Working) is not { } time)
        {
            return $"{where}: too cold, nobody can say whether it cures.";
        }

        var air = job.Verdict is { } verdict
            ? $"air {AirWording.Answer(verdict.Answer)}"
                + (verdict.Now is { } now ? $", dew point {Show.Number(now.Degrees)} °C off" : "")
            : "say the humidity too for the air";
        return $"{where}: flows {Show.Time(time.Likely)}{Own(job.Gel)}; {air}.";
    }

    private static string Own(GelPace gel) => gel.Shortened < 1 ? " (own)" : "";
}
