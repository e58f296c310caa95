using System.Globalization;
using StudioBot.Chat.Reading;
using StudioBot.Chat.Reading.Values;
using StudioBot.Chat.Replies;
using StudioBot.Chat.Sharing;
using StudioBot.Craft.Mixing;
using StudioBot.Craft.Pours;
using StudioBot.Craft.Practice;

namespace StudioBot.Chat.Asking;

/// <summary><c>workshop 8 people 2 tiles 10cm 5 colours</c>: paint for a group, each and all.</summary>
internal sealed class WorkshopCommand : Ask
{
    private static readonly ChoiceSlot Detail = new("", "a detail", new Dictionary<string, string>
    {
        ["shopping"] = "shopping",
        ["layers"] = "layers",
    });

    /// <inheritdoc/>
    public override CommandSheet Sheet { get; } = new(
        "workshop", Room.Asking, "Paint for a group, each and all.",
        [.. WorkshopPlan.Slots, Detail],
        ["workshop 8 people 2 tiles 10cm 5 colours", "workshop sat 10:00 8 people 2 tiles 10cm 5 colours"])
    {
        More = "With cups and a shopping list.",
        Also = ["class", "course"],
        Cues =
        [
            new("people/persons/students/guests/kids/participants {size}") { Weight = 6 },
        ],
    };

    /// <inheritdoc/>
    internal override IEnumerable<Meaning> AlsoUnderstood(Phrase said) =>
        said.Has(WorkshopPlan.People) && said.Has(WorkshopPlan.Size)
        ? [new("total_area_cm2", Figures.Of(WorkshopPlan.Surfaces(said).Total.SquareCentimetres))]
        : [];

    /// <inheritdoc/>
    internal override Misread? Check(Phrase said) => WorkshopPlan.Check(said, Sheet.Word);

    /// <inheritdoc/>
    internal override Reply Answer(Phrase said, Turn turn, Studio studio)
    {
        var (each, coat, needs) = WorkshopPlan.Of(said, studio);
        var shopping = Shopping.Of(needs, studio, Reservation.All(studio, turn.Now));
        return said.Or(Detail, "") switch
        {
            "shopping" => shopping.Show(studio),
            "layers" => new Reply(
                new Block.Headline($"Each person: {Show.ToMeasure(each.TotalMixed)} in {each.Cups} cups"),
                new Block.Figures(Layers(each)),
                new Block.Line($"What stays in the cups, {Show.ToMeasure(each.CupWaste)}, is in the total only.")),
            _ => Whole(said, each, coat, shopping, studio),
        };
    }

    private static Reply Whole(Phrase said, PourAmounts each, CoatNeeds? coat, Shopping shopping, Studio studio)
    {
        var people = said.Of(WorkshopPlan.People);
        List<Figure> rows =
        [
            new($"{people} {(people == 1 ? "person" : "people")}, each", Show.ToMeasure(each.TotalMixed)),
            new("Cups, own each", $"{people} x {each.Cups}{(coat is null ? "" : $" + {coat.Cups}")}"),
        ];
        if (coat is null)
        {
            rows.InsertRange(1, Layers(each));
        }
        else
        {
            rows.Insert(
                1,
                new Figure(
                    "Resin A + B",
                    $"{Show.ToMeasure(coat.Total.PartA.Volume)} + {Show.ToMeasure(coat.Total.PartB.Volume)}"));
        }

        List<Block> blocks =
        [
            new Block.Headline($"Mix {Show.Volume(Show.Measurable(each.TotalMixed) * people)} of paint in all"),
            new Block.Figures(rows),
            new Block.Line(Read(said, each, coat)),
            new Block.Line(shopping.Short(studio)),
        ];
        if (coat is not null)
        {
            blocks.Add(Cautions.InShort(
                studio,
                SafetySubject.ResinSkin,
                SafetySubject.ResinAir,
                SafetySubject.CupHeat));
        }

        return new Reply(blocks,
        [
            new Button("Reserve it", ReserveCommand.LineOf(said)),
            new Button("Shopping list", $"{said.Line} shopping"),
            new Button("Each person", $"{said.Line} layers"),
            coat is null
                ? new Button("With resin", $"{said.Line} resin")
                : new Button(
                    "Resin in detail",
                    $"resin {SurfaceSlot.Words(WorkshopPlan.Surfaces(said))} {Figures.Of(coat.Film.Millimetres)}mm"),
        ]);
    }

    private static string Read(Phrase said, PourAmounts each, CoatNeeds? coat)
    {
        var when = said.Has(WorkshopPlan.When)
            ? said.Of(WorkshopPlan.When).ToString("ddd d MMM HH:mm", CultureInfo.InvariantCulture) + ": "
            : "";
        List<string> taken = [];
        if (!said.Has(WorkshopPlan.Way))
        {
            taken.Add(each.Technique.Name);
        }

        if (!said.Has(WorkshopPlan.Colours))
        {
            taken.Add($"{each.Colours} colours");
        }

        if (coat is not null && !said.Has(WorkshopPlan.Film))
        {
            taken.Add(Show.Film(coat.Film));
        }

        if (coat is not null && !said.Has(WorkshopPlan.Ratio))
        {
            taken.Add(coat.Ratio + (coat.Ratio.By == RatioBy.Mass ? " by weight" : ""));
        }

        var times = said.Of(WorkshopPlan.People) == 1 ? "" : $"{said.Of(WorkshopPlan.People)} times ";
        var way = said.Has(WorkshopPlan.Way) ? $"; {each.Technique.Name}" : "";
        var area = Show.Area(WorkshopPlan.Surfaces(said).Total);
        return $"{when}{times}{Show.Surfaces(said.Of(WorkshopPlan.Size))} = {area}{way}."
            + (taken.Count > 0 ? $" Taken: {string.Join(", ", taken)}." : "");
    }

    private static List<Figure> Layers(PourAmounts each)
    {
        List<Figure> rows = [];
        if (each.Base.Millilitres > 0)
        {
            rows.Add(new Figure("base coat", Show.ToMeasure(each.Base)));
        }

        rows.Add(new Figure(
            each.Colours == 1 ? "1 colour" : $"{each.Colours} colours, each",
            Show.ToMeasure(each.PerColour)));
        if (each.Activator.Millilitres > 0)
        {
            rows.Add(new Figure("cell activator", Show.ToMeasure(each.Activator)));
        }

        return rows;
    }
}
