using StudioBot.Chat.Learning;
using StudioBot.Chat.Reading;
using StudioBot.Chat.Reading.Values;
using StudioBot.Craft.Coats;
using StudioBot.Craft.Pours;
using StudioBot.Craft.Surfaces;

namespace StudioBot.Chat.Asking;

/// <summary>What a workshop takes, as asked for and as reserved.</summary>
/// <param name="Each">The pour of one person.</param>
/// <param name="Coat">The resin of all; none where it was not mentioned.</param>
/// <param name="Needs">What all of it takes from the shelf.</param>
internal sealed record WorkshopPlan(PourAmounts Each, CoatNeeds? Coat, PourNeeds Needs)
{
    /// <summary>How many come.</summary>
    public static readonly CountSlot People = new(
        "people",
        "a number of people",
        ["people", "persons", "person", "pers", "ppl", "students", "guests", "participants", "folks", "kids", "adults"],
        200)
    {
        Lead = "for",
        IsRequired = true,
    };

    /// <summary>When it starts.</summary>
    public static readonly WhenSlot When = new(isPast: false, "when");

    /// <summary>What each pours on.</summary>
    public static readonly SurfaceSlot Size = new() { IsRequired = true };

    /// <summary>How thick the resin lies.</summary>
    public static readonly FilmSlot Film = new(Size);

    /// <summary>The technique.</summary>
    public static readonly NameSlot Way = new(NameKind.Technique, "technique", "a technique", "bloom");

    /// <summary>How many or which colours.</summary>
    public static readonly ColoursSlot Colours = new();

    /// <summary>The resin's ratio.</summary>
    public static readonly RatioSlot Ratio = new();

    /// <summary>That there is resin.</summary>
    public static readonly ChoiceSlot Resin = new("", "resin", new Dictionary<string, string>
    {
        ["resin"] = "resin",
        ["epoxy"] = "resin",
    });

    /// <summary>All of these, in the order in which a doubtful word is offered to them.</summary>
    public static IReadOnlyList<Slot> Slots { get; } = [People, When, Ratio, Film, Size, Way, Resin, Colours];

    /// <summary>What they leave wrong between them.</summary>
    /// <param name="said">The message.</param>
    /// <param name="word">The command word, for a message that works.</param>
    public static Misread? Check(Phrase said, string word) => said switch
    {
        _ when said.Has(Ratio) && said.Of(Ratio).Parts.Count != 2 =>
            new Misread(
                said.Of(Ratio).ToString(),
                "is no resin: it has two parts",
                $"{word} 8 people 30cm panel 2:1 2mm"),
        _ when said.Has(Film) && said.Of(Film) > CoatAmounts.ThickestCoat =>
            new Misread(
                Figures.Of(said.Of(Film).Millimetres) + "mm",
                "is a cast, not a coat: it heats up; up to 10 mm",
                $"{word} 8 people 30cm panel 2:1 2mm"),
        _ => null,
    };

    /// <summary>What was asked for.</summary>
    public static WorkshopPlan Of(Phrase said, Studio studio)
    {
        var technique = studio.Technique(said.Has(Way) ? said.Of(Way) : null);
        var colours = said.Or(Colours, new Colours(studio.Practice.Pours.UsualColours.Value, []));
        var each = studio.Amounts(
            technique, said.Of(Size), colours.Count, StudioFilms.Of(technique, said.Of(Size), null, studio));
        var coat = said.Has(Ratio) || said.Has(Film) || said.Has(Resin)
            ? CoatNeeds.Of(
                Surfaces(said),
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

        return new WorkshopPlan(each, coat, needs);
    }

    /// <summary>What all of them pour on.</summary>
    public static SurfaceSet Surfaces(Phrase said) => said.Of(Size) with
    {
        Groups = [.. said.Of(Size).Groups.Select(group => group with { Count = group.Count * said.Of(People) })],
    };
}
