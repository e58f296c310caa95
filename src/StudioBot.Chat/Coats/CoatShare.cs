using StudioBot.Craft.Coats;
using StudioBot.Craft.Practice;
using StudioBot.Craft.Surfaces;
using StudioBot.Craft.Units;
using StudioBot.Records.Pieces;

namespace StudioBot.Chat.Coats;

/// <summary>One piece's share of a mix that was poured over several: by the area of their faces.</summary>
/// <param name="Piece">The piece.</param>
/// <param name="A">Of part A.</param>
/// <param name="B">Of part B.</param>
/// <param name="Film">How thick it lies on the face.</param>
internal sealed record CoatShare(Piece Piece, Volume A, Volume B, Length Film)
{
    private static readonly Length Thinnest = Length.FromMillimetres(0.05);

    /// <summary>Whether nobody can spread it so thinly.</summary>
    public bool IsTooThin => Film < Thinnest;

    /// <summary>Whether it is a cast and no coat.</summary>
    public bool IsCast => CoatAmounts.IsCast(Film);

    /// <summary>The share of each piece.</summary>
    /// <param name="pieces">At least one.</param>
    /// <param name="a">Of part A, over all.</param>
    /// <param name="b">Of part B, over all.</param>
    /// <param name="system">With its run-off and its film on sides.</param>
    public static IReadOnlyList<CoatShare> Of(IReadOnlyList<Piece> pieces, Volume a, Volume b, ResinSystem system)
    {
        var whole = pieces.Aggregate(default(Area), (sum, piece) => sum + piece.Surface.Face);
        return [.. pieces.Select(piece =>
        {
            var share = piece.Surface.Face / whole;
            return new CoatShare(piece, a * share, b * share, FilmOf(piece, (a + b) * share, system));
        })];
    }

    // What stays, less what hangs on the sides; where that would be all of it, face and sides are alike.
    private static Length FilmOf(Piece piece, Volume poured, ResinSystem system)
    {
        var surface = new SurfaceSet(piece.Surface, depth: piece.Depth);
        var stays = poured / (1 + system.RunOff.Value.Usual);
        var onSides = surface.Sides * system.SideFilm.Value;
        var even = stays / surface.Total;
        return even < system.SideFilm.Value
            ? even
            : Volume.FromMillilitres(stays.Millilitres - onSides.Millilitres) / surface.Faces;
    }
}
