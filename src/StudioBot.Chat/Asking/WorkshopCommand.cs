using System.Globalization;
using StudioBot.Chat.Reading;
using StudioBot.Chat.Reading.Values;
using StudioBot.Chat.Replies;
using StudioBot.Craft.Coats;
using StudioBot.Craft.Mixing;
using StudioBot.Craft.Pours;
using StudioBot.Craft.Practice;
using StudioBot.Craft.Surfaces;

namespace StudioBot.Chat.Asking;

/// <summary><c>workshop 8 people 2 tiles 10cm 5 colours</c>: paint for a group, each and all.</summary>
internal sealed class WorkshopCommand : Ask
{
    private static readonly CountSlot People = new(
        "people",
        "a number of people",
        ["people", "persons", "person", "pers", "ppl", "students", "guests", "participants", "folks", "kids", "adults"],
        200)
    {
        Lead = "for",
        IsRequired = true,
    };

    private static readonly WhenSlot When = new(isPast: false, "when");
    private static readonly SurfaceSlot Size = new() { IsRequired = true };
    private static readonly FilmSlot Film = new(Size);
    private static readonly NameSlot Way = new(NameKind.Technique, "technique", "a technique", "bloom");
    private static readonly ColoursSlot Colours = new();
    private static readonly RatioSlot Ratio = new();
    private static readonly ChoiceSlot Resin = new("", "resin", new Dictionary<string, string>
    {
        ["resin"] = "resin",
        ["epoxy"] = "resin",
    });

    private static readonly ChoiceSlot Detail = new("", "a detail", new Dictionary<string, string>
    {
        ["shopping"] = "shopping",
        ["layers"] = "layers",
    });

    /// <inheritdoc/>
    public override CommandSheet Sheet { get; } = new(
        "workshop", Room.Asking, "Paint for a group, each and all.",
        [People, When, Ratio, Film, Size, Way, Resin, Colours, Detail],
        ["workshop 8 people 2 tiles 10cm 5 colours", "workshop sat 10:00 8 people 2 tiles 10cm 5 colours"])
    {
        Also = ["class", "course"],
        Cues =
        [
            new("people/persons/students/guests/kids/participants {size}") { Weight = 6 },
        ],
    };

    /// <inheritdoc/>
    internal override IEnumerable<Meaning> AlsoUnderstood(Phrase said) => said.Has(People) && said.Has(Size)
        ? [new("total_area_cm2", Figures.Of(said.Of(Size).Total.SquareCentimetres * said.Of(People)))]
        : [];

    /// <inheritdoc/>
    internal override Misread? Check(Phrase said) => said switch
    {
        _ when said.Has(Ratio) && said.Of(Ratio).Parts.Count != 2 =>
            new Misread(
                said.Of(Ratio).ToString(),
                "is no resin: it has two parts",
                "workshop 8 people 30cm panel 2:1 2mm"),
        _ when said.Has(Film) && said.Of(Film) > CoatAmounts.ThickestCoat =>
            new Misread(
                Figures.Of(said.Of(Film).Millimetres) + "mm",
                "is a cast, not a coat: it heats up; up to 10 mm",
                "workshop 8 people 30cm panel 2:1 2mm"),
        _ => null,
    };

    /// <inheritdoc/>
    internal override Reply Answer(Phrase said, Turn turn, Studio studio)
    {
        var technique = studio.Technique(said.Has(Way) ? said.Of(Way) : null);
        var colours = said.Or(Colours, new Colours(studio.Practice.Pours.UsualColours.Value, []));
        var each = PourAmounts.For(technique, said.Of(Size), colours.Count, studio.Practice.Pours.SideFilm.Value);
        var coat = said.Has(Ratio) || said.Has(Film) || said.Has(Resin)
            ? CoatNeeds.Of(
                All(said),
                1,
                said.Has(Film) ? said.Of(Film) : null,
                said.Has(Ratio) ? said.Of(Ratio) : null,
                studio)
            : null;
        var needs = new PourNeeds(studio);
        needs.Pour(each, colours, said.Of(People));
        needs.Surfaces(said.Of(Size), said.Of(People));
        if (coat is not null)
        {
            needs.Coat(coat.Total, coat.Cups);
        }

        var shopping = Shopping.Of(needs, studio);
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
        var people = said.Of(People);
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
            new Button("Shopping list", $"{said.Line} shopping"),
            new Button("Each person", $"{said.Line} layers"),
            coat is null
                ? new Button("With resin", $"{said.Line} resin")
                : new Button(
                    "Resin in detail",
                    $"resin {SurfaceSlot.Words(All(said))} {Figures.Of(coat.Film.Millimetres)}mm"),
        ]);
    }

    private static string Read(Phrase said, PourAmounts each, CoatNeeds? coat)
    {
        var when = said.Has(When) ? said.Of(When).ToString("ddd d MMM HH:mm", CultureInfo.InvariantCulture) + ": " : "";
        List<string> taken = [];
        if (!said.Has(Way))
        {
            taken.Add(each.Technique.Name);
        }

        if (!said.Has(Colours))
        {
            taken.Add($"{each.Colours} colours");
        }

        if (coat is not null && !said.Has(Film))
        {
            taken.Add(Show.Film(coat.Film));
        }

        if (coat is not null && !said.Has(Ratio))
        {
            taken.Add(coat.Ratio + (coat.Ratio.By == RatioBy.Mass ? " by weight" : ""));
        }

        var times = said.Of(People) == 1 ? "" : $"{said.Of(People)} times ";
        var way = said.Has(Way) ? $"; {each.Technique.Name}" : "";
        return $"{when}{times}{Show.Surfaces(said.Of(Size))} = {Show.Area(All(said).Total)}{way}."
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

    private static SurfaceSet All(Phrase said) => said.Of(Size) with
    {
        Groups = [.. said.Of(Size).Groups.Select(group => group with { Count = group.Count * said.Of(People) })],
    };
}
