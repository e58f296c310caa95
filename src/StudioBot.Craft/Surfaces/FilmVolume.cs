using StudioBot.Craft.Units;

namespace StudioBot.Craft.Surfaces;

/// <summary>How much liquid lies on surfaces: faces and sides, each under its own film.</summary>
public static class FilmVolume
{
    /// <summary>What stays on the sides of a poured panel, 1.0 mm (common practice).</summary>
    public static Length PouredSides { get; } = Length.FromMillimetres(1.0);

    /// <summary>What resin leaves on the sides, 0.5 mm (common practice).</summary>
    public static Length ResinSides { get; } = Length.FromMillimetres(0.5);

    /// <summary>V = A_face·h_face + A_sides·h_sides; 1 mm over 1 m² is exactly 1 L.</summary>
    /// <param name="surfaces">What is covered; without a depth there are no sides.</param>
    /// <param name="film">On the faces.</param>
    /// <param name="onSides">On the sides, where it is thinner.</param>
    public static Volume On(SurfaceSet surfaces, Length film, Length onSides) =>
        surfaces.Faces * film + surfaces.Sides * onSides;
}
