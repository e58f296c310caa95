using StudioBot.Chat.Reading;
using StudioBot.Chat.Reading.Values;

namespace StudioBot.Chat.Asking;

/// <summary><c>workshop 8 people 2 tiles 10cm 5 colours</c>: paint for a group, each and all.</summary>
internal sealed class WorkshopCommand() : Unopened(records: false)
{
    private static readonly CountSlot People = new("people", "a number of people", ["people", "persons", "person", "pers", "students", "guests", "participants", "folks", "kids", "adults"], 200) { Lead = "for", IsRequired = true };
    private static readonly WhenSlot When = new(isPast: false, "when");
    private static readonly SurfaceSlot Size = new() { IsRequired = true };
    private static readonly FilmSlot Film = new(Size);
    private static readonly NameSlot Way = new(NameKind.Technique, "technique", "a technique", "bloom");
    private static readonly ColoursSlot Colours = new();
    private static readonly RatioSlot Ratio = new();

    /// <inheritdoc/>
    public override CommandSheet Sheet { get; } = new(
        "workshop", Room.Asking, "Paint for a group, each and all.",
        [People, When, Film, Size, Way, Colours, Ratio],
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
}
