using StudioBot.Chat.Learning;
using StudioBot.Chat.Reading;
using StudioBot.Chat.Reading.Values;
using StudioBot.Chat.Replies;
using StudioBot.Craft.Pours;
using StudioBot.Craft.Surfaces;

namespace StudioBot.Chat.Asking;

/// <summary><c>amounts 30cm panel bloom 6 colours</c>: how much paint a surface takes.</summary>
internal sealed class AmountsCommand : Ask
{
    private static readonly SurfaceSlot Size = new() { IsRequired = true };
    private static readonly NameSlot Way = new(NameKind.Technique, "technique", "a technique", "bloom");
    private static readonly ColoursSlot Colours = new();
    private static readonly ChoiceSlot Detail = new("", "a detail", new Dictionary<string, string>
    {
        ["mixes"] = "mixes",
        ["grounds"] = "grounds",
    });

    /// <inheritdoc/>
    public override CommandSheet Sheet { get; } = new(
        "amounts", Room.Asking, "How much paint a surface takes.",
        [Size, Way, Colours, Detail],
        ["amounts 30cm panel bloom 6 colours", "how much for a 40cm round?", "amounts 6 x 10cm tile swipe 3 colours"])
    {
        More = "Total, base coat, each colour, activator, what stays in cups; by your own pours, once they were "
            + "measured, enough four times of five; a picture of the cups, to prop up at the table; the mix of "
            + "each behind a button.",
        Also = ["amount"],
        Cues =
        [
            new("how much {size}"),
            new("amount/amounts {size}"),
            new("paint need/needed/needs {size}"),
            new("how much paint/bloom/swipe {size}"),
            new("need/needed/needs {size}"),
        ],
    };

    /// <inheritdoc/>
    internal override Reply Answer(Phrase said, Turn turn, Studio studio)
    {
        var technique = studio.Technique(said.Has(Way) ? said.Of(Way) : null);
        var colours = said.Or(Colours, new Colours(studio.Practice.Pours.UsualColours.Value, []));
        var learnt = StudioFilms.Of(technique, said.Of(Size), turn.Member?.Name, studio);
        var amounts = studio.Amounts(technique, said.Of(Size), colours.Count, learnt);
        return said.Or(Detail, "") switch
        {
            "mixes" => PourMixes.Of(amounts, colours, said, studio),
            "grounds" => Grounds(amounts, learnt, said.Of(Size)),
            _ => Cups(amounts, learnt, colours, said, studio),
        };
    }

    private static Reply Cups(
        PourAmounts amounts, LearntNeed? learnt, Colours colours, Phrase said, Studio studio)
    {
        List<Block> blocks =
        [
            new Block.Headline($"Mix {Show.Number(Measured(amounts), 0)} ml in all"),
            new Block.Figures(Rows(amounts)),
            new Block.Line(
                $"{Show.Surfaces(said.Of(Size))} = {Show.Area(said.Of(Size).Total)}; "
                + $"{amounts.Technique.Name}.{Taken(said, amounts)}"),
            new Block.Line(learnt is null
                ? $"Common practice: {Show.ToMeasure(amounts.Low)} to {Show.ToMeasure(amounts.High)}."
                : $"By {learnt.Pours}: enough 4 times of 5; most take {Show.ToMeasure(amounts.Low)} to "
                    + $"{Show.ToMeasure(amounts.High)}."),
        ];
        if (ShelfCheck.Of(amounts, colours, studio) is { } shelf)
        {
            blocks.Add(shelf);
        }

        var line = said.Line;
        return new Reply(blocks,
        [
            new Button("Mix of each", $"{line} mixes"),
            new Button("How worked out", $"{line} grounds"),
            new Button("Add resin", $"resin {SurfaceSlot.Words(said.Of(Size))}"),
            Other(amounts.Technique, said, studio),
        ])
        {
            File = CupsSketch.Of(amounts, colours, said.Of(Size), Measured(amounts)),
        };
    }

    // What the rows below add up to, each rounded up to what a cup can measure.
    private static double Measured(PourAmounts amounts) =>
        Show.Measurable(amounts.Base).Millilitres + amounts.Colours * Show.Measurable(amounts.PerColour).Millilitres
        + Show.Measurable(amounts.Activator).Millilitres + Show.Measurable(amounts.CupWaste).Millilitres;

    private static List<Figure> Rows(PourAmounts amounts)
    {
        List<Figure> rows = [];
        if (amounts.Base.Millilitres > 0)
        {
            rows.Add(new Figure("Base coat", Show.ToMeasure(amounts.Base)));
        }

        rows.Add(new Figure(
            amounts.Colours == 1 ? "1 colour" : $"{amounts.Colours} colours, each",
            Show.ToMeasure(amounts.PerColour)));
        if (amounts.Activator.Millilitres > 0)
        {
            rows.Add(new Figure("Cell activator", Show.ToMeasure(amounts.Activator)));
        }

        rows.Add(new Figure($"Stays in {amounts.Cups} cups", Show.ToMeasure(amounts.CupWaste)));
        return rows;
    }

    private static string Taken(Phrase said, PourAmounts amounts)
    {
        List<string> taken = [];
        if (!said.Has(Way))
        {
            taken.Add(amounts.Technique.Name);
        }

        if (!said.Has(Colours))
        {
            taken.Add($"{amounts.Colours} colours");
        }

        return taken.Count > 0 ? $" Taken: {string.Join(", ", taken)}." : "";
    }

    private static Button Other(Technique technique, Phrase said, Studio studio)
    {
        var other = studio.Practice.Techniques.First(one => one.Name != technique.Name);
        var colours = said.Has(Colours) ? " " + Colours.Say(said.Of(Colours)) : "";
        return new Button($"As {other.Name}", $"amounts {SurfaceSlot.Words(said.Of(Size))} {other.Name}{colours}");
    }

    private static Reply Grounds(PourAmounts amounts, LearntNeed? learnt, SurfaceSet size)
    {
        List<Figure> rows =
        [
            new("Face", Show.Area(size.Faces)),
            learnt is null
                ? new("Film laid", Show.Film(amounts.Technique.Laid.Usual))
                : new("Need a face, own", Show.Film(learnt.Estimate.Mean)),
            new("Stays on the face", Show.Volume(amounts.Laid)),
            new("Runs off", Show.Volume(amounts.RunOff)),
        ];
        if (size.Depth is not null)
        {
            rows.Insert(3, new Figure("Stays on the sides", Show.Volume(amounts.OnSides)));
        }

        rows.Add(new Figure($"In {amounts.Cups} cups", Show.Volume(amounts.CupWaste)));
        return new Reply(
            new Block.Headline($"{Show.Volume(amounts.TotalMixed)}, and how"),
            new Block.Figures(rows),
            new Block.Line("1 mm over 1 m² is 1 L. Run-off leaves over the rim, so small pieces lose more of it."),
            new Block.Line(learnt is null
                ? "Films and run-off are common practice and scatter by half; your own pours will tell better."
                : $"From {learnt.Pours}, and common practice worth {FilmPrior.UsualWeight:0} more. One pour scatters "
                    + $"by {Show.Film(learnt.Estimate.Spread)}; this is enough four times of five."
                    + Left(learnt)));
    }

    private static string Left(LearntNeed learnt) => learnt.Slips.Count == 0
        ? ""
        : $" Left out as slips: {string.Join(", ", learnt.Slips)}.";
}
