using StudioBot.Craft.Surfaces;
using StudioBot.Craft.Units;
using StudioBot.Records.Acts;
using StudioBot.Records.Materials;
using StudioBot.Records.Members;
using StudioBot.Records.Pieces;
using StudioBot.Records.Recipes;
using StudioBot.Records.Rooms;

namespace StudioBot.Records.Sample;

/// <summary>What the invented studio has poured: pieces 1 to 21.</summary>
internal static class SamplePieces
{
    // 2.5 mm laid and a fifth more that runs off (common practice).
    private static readonly Length Poured = Length.FromMillimetres(3);

    // In the order they were poured, so that the numbers follow.
    private static readonly IReadOnlyList<Pour> Pours =
    [
        new(Panel(20, 20), "swipe", 3, "ocean", 1, "Mira", 10, 27, 17, Stage.Sold, null),
        new(Disc(30), "bloom", 5, "dusk", 2, "Pia", 10, 28, 18, Stage.Kept, null),
        new(Panel(30, 40), "bloom", 6, "ocean", 2, "Tomas", 10, 29, 18, Stage.Cured, "A1") { Deep = 2 },
        new(Panel(10, 10), "swipe", 3, null, 4, "Jonas", 10, 30, 11, Stage.Bin, null),
        new(Panel(10, 10), "swipe", 3, null, 4, "Jonas", 10, 30, 11, Stage.Kept, null),
        new(Oval(20, 30), "bloom", 5, "dusk", 4, "Pia", 11, 1, 15, Stage.Cured, "A2"),
        new(Hexagon(15), "swipe", 4, "ocean", 5, "Mira", 11, 2, 19, Stage.Sold, null),
        new(Disc(40), "bloom", 5, "ocean", 5, "Tomas", 11, 3, 18, Stage.Cured, "A3"),
        new(Panel(21, 29.7), "swipe", 3, "dusk", 6, "Pia", 11, 5, 18, Stage.Cured, "A4"),
        new(Disc(10), "bloom", 3, null, 7, "Jonas", 11, 8, 12, Stage.Coated, "C1"),
        new(Disc(10), "bloom", 3, null, 7, "Jonas", 11, 8, 12, Stage.Coated, "C1"),
        new(Panel(25, 25), "swipe", 4, "dusk", 7, "Pia", 11, 9, 18, Stage.Coated, "C2"),
        new(Panel(40, 40), "bloom", 6, "ocean", 9, "Mira", 11, 12, 19, Stage.Coated, "C3"),
        new(Panel(30, 30), "bloom", 5, "dusk", 9, "Tomas", 11, 13, 17, Stage.Ready, "B1"),
        new(Disc(25), "swipe", 4, "ocean", 9, "Pia", 11, 14, 16, Stage.Ready, "B1"),
        new(Panel(20, 20), "swipe", 3, null, 10, "Jonas", 11, 16, 18, Stage.Ready, "B2"),
        new(Panel(30, 30), "bloom", 6, "ocean", 12, "Mira", 11, 21, 11, Stage.Drying, "B3"),
        new(Disc(30), "bloom", 5, "dusk", 12, "Pia", 11, 21, 15, Stage.Drying, "B3"),
        new(Hexagon(15), "swipe", 4, "ocean", 12, "Tomas", 11, 22, 16, Stage.Drying, "B4"),
        new(Panel(30, 40), "swipe", 4, "dusk", 12, "Jonas", 11, 23, 18, Stage.Drying, "B4") { Deep = 2 },
        new(Panel(25, 25), "bloom", 5, "ocean", 13, "Pia", 11, 24, 18, Stage.Drying, "C4"),
    ];

    public static void WriteInto(
        StudioSession session,
        IReadOnlyDictionary<string, Member> members,
        IReadOnlyDictionary<string, Shelf> shelves,
        IReadOnlyDictionary<string, Recipe> recipes,
        Act act)
    {
        foreach (var pour in Pours)
        {
            var recipe = pour.Recipe is { } name ? recipes[name] : null;
            var when = SampleTime.At(pour.Month, pour.Day, pour.Hour, 20);
            session.Pieces.Pour(new NewPiece(pour.Surface, pour.Technique, members[pour.Maker], when)
            {
                Depth = pour.Deep is { } deep ? Length.FromCentimetres(deep) : null,
                Colours = pour.Colours,
                Recipe = recipe,
                Batch = pour.Batch,
                Stage = pour.Stage,
                Shelf = pour.Shelf is { } label ? shelves[label] : null,
                Parts = recipe is null ? [] : Sized(recipe, pour.Surface.Face * Poured),
            }, act);
        }
    }

    // Powders hardly add to the volume, so the recipe's size is that of what is poured into it.
    private static IReadOnlyList<Part> Sized(Recipe recipe, Volume need)
    {
        var saved = recipe.Parts.Select(part => part.Amount).OfType<Amount.ByVolume>()
            .Aggregate(default(Volume), (sum, amount) => sum + amount.Volume);
        var times = need / saved;
        return [.. recipe.Parts.Select(part => part with { Amount = Times(part.Amount, times) })];
    }

    private static Amount Times(Amount amount, double times) => amount switch
    {
        Amount.ByVolume poured => new Amount.ByVolume(poured.Volume * times),
        Amount.ByMass weighed => new Amount.ByMass(weighed.Mass * times),
        _ => throw new ArgumentOutOfRangeException(nameof(amount), amount, "A recipe has no counted parts."),
    };

    private static Surface.Panel Panel(double width, double height) =>
        new(Length.FromCentimetres(width), Length.FromCentimetres(height));

    private static Surface.Disc Disc(double diameter) => new(Length.FromCentimetres(diameter));

    private static Surface.Oval Oval(double width, double height) =>
        new(Length.FromCentimetres(width), Length.FromCentimetres(height));

    private static Surface.Hexagon Hexagon(double acrossFlats) => new(Length.FromCentimetres(acrossFlats));

    private sealed record Pour(
        Surface Surface,
        string Technique,
        int Colours,
        string? Recipe,
        int Batch,
        string Maker,
        int Month,
        int Day,
        int Hour,
        Stage Stage,
        string? Shelf)
    {
        public double? Deep { get; init; }
    }
}
