using StudioBot.Craft.Surfaces;
using StudioBot.Craft.Units;

namespace StudioBot.Chat.Reading.Values;

/// <summary>Makes surfaces of the words gathered for them, or says what is wrong with a size.</summary>
internal static class SurfaceBuild
{
    private const double LongestSide = 300;
    private const double DeepestSide = 10;
    private const double Coaster = 10;

    /// <summary>The surfaces; none where a size can't be meant, which is then a slip.</summary>
    public static SurfaceSet? From(PhraseDraft draft, SurfaceDraft surface, SurfaceSlot slot)
    {
        List<SurfaceGroup> groups = [];
        foreach (var group in surface.Groups)
        {
            if (Build(draft, group, slot) is not { } built)
            {
                return null;
            }

            groups.Add(built);
        }

        if (surface.Depth is not { } depth)
        {
            return new SurfaceSet(groups);
        }

        if (depth.Depth is > 0 and <= DeepestSide)
        {
            return new SurfaceSet(groups, Length.FromCentimetres(depth.Depth));
        }

        draft.Slip(depth.At, 1, "is no depth of a panel: up to 10 cm");
        return null;
    }

    private static SurfaceGroup? Build(PhraseDraft draft, SurfaceDraft.Group group, SurfaceSlot slot)
    {
        if (group.Sizes.Count == 0 && group.IsCoaster)
        {
            group.Sizes = [Coaster];
        }

        if (group.Sizes.Count == 0)
        {
            if (slot.IsRequired)
            {
                Unsized(draft, group);
            }

            return null;
        }

        if (group.Sizes.Any(size => size is < 1 or > LongestSide))
        {
            draft.Slip(group.SizeAt, 1, Absurd(group.Sizes.First(size => size is < 1 or > LongestSide)));
            return null;
        }

        var sizes = group.Sizes.Select(Length.FromCentimetres).ToList();
        var count = group.Count ?? 1;
        return group.Shape switch
        {
            "round" when sizes.Count == 1 || sizes[0] == sizes[1] => new(count, new Surface.Disc(sizes[0])),
            "round" or "oval" => new(count, new Surface.Oval(sizes[0], sizes[^1])),
            "hexagon" when group.AcrossCorners => new(count, Surface.Hexagon.FromAcrossCorners(sizes[0])),
            "hexagon" => new(count, new Surface.Hexagon(sizes[0])),
            _ => new(count, new Surface.Panel(sizes[0], sizes[^1])),
        };
    }

    // A figure that nobody took says better what is wrong.
    private static void Unsized(PhraseDraft draft, SurfaceDraft.Group group)
    {
        var isFigureLeft = draft.Atoms.Where((_, at) => !draft.IsTaken(at))
            .Any(atom => atom.Kind is AtomKind.Quantity or AtomKind.Number);
        if (isFigureLeft)
        {
            return;
        }

        for (var at = 0; at < draft.Atoms.Count; at++)
        {
            if (draft.Atoms[at].Kind == AtomKind.Word && (draft.Atoms[at].Lower == group.Noun || at == group.ShapeAt))
            {
                draft.Slip(at, 1, "says no size");
                return;
            }
        }
    }

    private static string Absurd(double centimetres) => centimetres switch
    {
        <= 0 => "is no size: above zero",
        < 1 => "is too small: sizes go from 1 to 300 cm",
        _ => "is too large: sizes go from 1 to 300 cm",
    };
}
