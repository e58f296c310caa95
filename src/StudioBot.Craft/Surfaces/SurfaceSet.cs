using StudioBot.Craft.Units;

namespace StudioBot.Craft.Surfaces;

/// <summary>Everything that one mixture is to cover: so many of this surface, so many of that, all equally
/// deep.</summary>
/// <param name="Groups">At least one; each count at least 1.</param>
/// <param name="Depth">How deep the sides are that get covered too; none where only the faces count.</param>
public sealed record SurfaceSet(IReadOnlyList<SurfaceGroup> Groups, Length? Depth = null)
{
    /// <summary>One surface.</summary>
    public SurfaceSet(Surface surface, int count = 1, Length? depth = null)
        : this([new SurfaceGroup(count, surface)], depth)
    {
    }

    /// <summary>How many pieces there are.</summary>
    public int Count => Groups.Sum(group => group.Count);

    /// <summary>All tops together.</summary>
    public Area Faces => Sum(group => group.Surface.Face * group.Count);

    /// <summary>All sides together; nothing without a depth.</summary>
    public Area Sides => Depth is { } depth ? Sum(group => group.Surface.Sides(depth) * group.Count) : default;

    /// <summary>Tops and sides.</summary>
    public Area Total => Faces + Sides;

    private Area Sum(Func<SurfaceGroup, Area> of) => Groups.Aggregate(default(Area), (sum, group) => sum + of(group));
}
