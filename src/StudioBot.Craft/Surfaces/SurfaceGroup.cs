namespace StudioBot.Craft.Surfaces;

/// <summary>So many pieces of one surface.</summary>
/// <param name="Count">1 or more.</param>
/// <param name="Surface">The shape of each.</param>
public sealed record SurfaceGroup(int Count, Surface Surface);
