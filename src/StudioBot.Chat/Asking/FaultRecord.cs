using StudioBot.Chat.Replies;
using StudioBot.Craft;
using StudioBot.Craft.Air;
using StudioBot.Craft.Practice;
using StudioBot.Craft.Surfaces;
using StudioBot.Craft.Units;
using StudioBot.Records.Materials;
using StudioBot.Records.Pieces;

namespace StudioBot.Chat.Asking;

/// <summary>What the studio's records can say of a fault: of one piece, or of the room alone.</summary>
/// <param name="Signs">What speaks for or against a cause.</param>
/// <param name="Line">The record in a line; empty where there is none.</param>
internal sealed record FaultRecord(PieceSigns Signs, string Line)
{
    /// <summary>What the pieces with this fault share, in a line; none where no piece has it on record.</summary>
    public string? Pattern { get; init; }

    /// <summary>Of this piece, or of the first room where none was named.</summary>
    public static FaultRecord Of(Piece? piece, Studio studio)
    {
        var readings = studio.View.Rooms.Current();
        var room = studio.View.Rooms.Shelves().FirstOrDefault(shelf => shelf.Label == piece?.Shelf)?.Room;
        var reading = readings.FirstOrDefault(one => one.Room == room) ?? (readings is [var first, ..] ? first : null);
        var air = reading is not null
            && RoomAir.Read(reading.Temperature, reading.Humidity) is Finding<RoomAir>.Found(var read)
            ? read
            : null;
        var now = air is null
            ? ""
            : $"{reading!.Room} now {Show.Degrees(air.Temperature)}, {Show.Share(air.Humidity.Share)}";
        var signs = new PieceSigns { MostWater = studio.Practice.Pours.MostWater.Value, Air = air };
        return piece is null
            ? new FaultRecord(signs, now.Length > 0 ? Sentences.Capital(now) + "." : "")
            : new FaultRecord(
                With(piece, signs, studio),
                $"{piece.Number}: {Poured(piece)}{(now.Length > 0 ? "; " + now : "")}.");
    }

    private static PieceSigns With(Piece piece, PieceSigns signs, Studio studio)
    {
        var technique = studio.Practice.Techniques.FirstOrDefault(one => one.Name == piece.Technique);
        signs = signs with { Technique = technique, Colours = piece.Colours };
        if (piece.Parts.Count == 0)
        {
            return signs;
        }

        var wet = RecipeHazards.Wet(piece.Parts);
        var powder = piece.Parts
            .Select(part => part.Amount)
            .OfType<Amount.ByMass>()
            .Aggregate(default(Mass), (sum, part) => sum + part.Mass);
        var face = new SurfaceSet(piece.Surface, depth: piece.Depth).Total;
        return signs with
        {
            Poured = wet.Millilitres > 0 ? wet / face : null,
            Powder = wet.Millilitres > 0 ? powder / wet : null,
            Water = wet.Millilitres > 0 ? RecipeHazards.Wet(piece.Parts, RecipeHazards.Water) / wet : null,
            CeilingPaint = RecipeHazards.Wet(piece.Parts, "ceiling paint").Millilitres > 0,
            OnlyPowders = !piece.Parts.Any(part => Kind(part.Material, studio) is MaterialKind.Paint or null),
        };
    }

    private static string Poured(Piece piece)
    {
        var wet = RecipeHazards.Wet(piece.Parts);
        List<string> words = [piece.Technique];
        if (piece.Colours is { } colours)
        {
            words.Add($"{colours} colours");
        }

        words.Add(wet.Millilitres > 0
            ? $"{Show.ToMeasure(wet)} on {Show.Area(piece.Surface.Face)}"
            : "nothing on record of what went in");
        return string.Join(", ", words);
    }

    private static MaterialKind? Kind(string material, Studio studio) =>
        studio.Practice.Materials.FirstOrDefault(one => one.Name == material)?.Kind;
}
