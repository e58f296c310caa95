using StudioBot.Chat.Replies;
using StudioBot.Craft;
using StudioBot.Craft.Coats;
using StudioBot.Craft.Practice;
using StudioBot.Craft.Surfaces;
using StudioBot.Craft.Units;
using StudioBot.Records.Materials;
using StudioBot.Records.Pieces;

namespace StudioBot.Chat.Asking;

/// <summary>How much resin, and for what.</summary>
/// <param name="Total">For all coats.</param>
/// <param name="OneCoat">For one of them: what is mixed at once.</param>
/// <param name="What">What it is for, as read.</param>
/// <param name="OnFaces">What stays on the faces, all coats.</param>
/// <param name="OnSides">What stays on the sides, all coats.</param>
/// <param name="RunOff">What flows over the edge, all coats.</param>
/// <param name="Caution">Why to mind the film; none where it is a usual one.</param>
internal sealed record ResinNeed(
    Volume Total, Volume OneCoat, string What, Volume OnFaces, Volume OnSides, Volume RunOff, string? Caution)
{
    /// <summary>A total that was said; nothing is known of a film.</summary>
    public static ResinNeed Said(Resin resin, Amount total)
    {
        var volume = total is Amount.ByMass mass ? resin.Split(mass.Mass).Volume : ((Amount.ByVolume)total).Volume;
        return new ResinNeed(volume, volume, Show.Amount(total), default, default, default, null);
    }

    /// <summary>What these surfaces take.</summary>
    /// <param name="surfaces">Each set of its own depth; at least one.</param>
    /// <param name="what">Those surfaces in words.</param>
    /// <param name="film">On the faces, by one coat, 0.05 to 10 mm.</param>
    /// <param name="coats">1 or more.</param>
    /// <param name="resin">In its ratio.</param>
    /// <param name="system">With its run-off and film on the sides.</param>
    public static ResinNeed For(
        IReadOnlyList<SurfaceSet> surfaces, string what, Length film, int coats, Resin resin, ResinSystem system)
    {
        var need = new ResinNeed(default, default, what, default, default, default, null);
        foreach (var set in surfaces)
        {
            var wish = new CoatWish(set, film, system.RunOff.Value.Usual, system.SideFilm.Value, coats);
            var (amounts, caution) = CoatAmounts.Of(wish, resin) switch
            {
                Finding<CoatAmounts>.Found found => (found.Value, null),
                Finding<CoatAmounts>.Cautioned cautioned => (cautioned.Value, cautioned.Caution),
                Finding<CoatAmounts>.None none => throw new ArgumentOutOfRangeException(nameof(film), film, none.Why),
                _ => throw new InvalidOperationException("A coat has amounts or none."),
            };
            need = need with
            {
                Total = need.Total + amounts.Total,
                OneCoat = need.OneCoat + amounts.OneCoat.Volume,
                OnFaces = need.OnFaces + set.Faces * film * coats,
                OnSides = need.OnSides + set.Sides * system.SideFilm.Value * coats,
                RunOff = need.RunOff + amounts.RunOff,
                Caution = caution,
            };
        }

        return need;
    }

    /// <summary>Pieces as they were poured, those equally deep together.</summary>
    public static IReadOnlyList<SurfaceSet> Of(IReadOnlyList<Piece> pieces) =>
    [
        .. pieces.GroupBy(piece => piece.Depth)
            .Select(alike => new SurfaceSet([.. alike.Select(piece => new SurfaceGroup(1, piece.Surface))], alike.Key)),
    ];
}
