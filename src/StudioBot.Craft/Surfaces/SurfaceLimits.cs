using System.Globalization;
using StudioBot.Craft.Units;

namespace StudioBot.Craft.Surfaces;

/// <summary>What sizes are believed; anything outside is more likely a slip between centimetres and
/// millimetres.</summary>
/// <remarks>Common practice: each size 1–300 cm, depth 0–10 cm, film 0.05–20 mm, ends included.</remarks>
public static class SurfaceLimits
{
    private const string Asks = "Did you mean cm or mm?";

    /// <summary>The smallest size of a surface.</summary>
    public static Length Smallest { get; } = Length.FromCentimetres(1);

    /// <summary>The largest size of a surface.</summary>
    public static Length Largest { get; } = Length.FromCentimetres(300);

    /// <summary>The deepest sides.</summary>
    public static Length Deepest { get; } = Length.FromCentimetres(10);

    /// <summary>The thinnest film.</summary>
    public static Length Thinnest { get; } = Length.FromMillimetres(0.05);

    /// <summary>The thickest film.</summary>
    public static Length Thickest { get; } = Length.FromMillimetres(20);

    /// <summary>The surface itself, or out of range with the size that can't be meant.</summary>
    public static Finding<Surface> Of(Surface surface)
    {
        foreach (var size in Sizes(surface).Where(size => Outside(size, Smallest, Largest)))
        {
            return new Finding<Surface>.None(
                NoFigure.OutOfRange, $"{Cm(size)} is outside 1 to 300 cm", Asks);
        }

        return new Finding<Surface>.Found(surface);
    }

    /// <summary>All surfaces and their depth, or out of range with the first size that can't be meant.</summary>
    public static Finding<SurfaceSet> Of(SurfaceSet surfaces)
    {
        var odd = surfaces.Groups.Select(group => Of(group.Surface)).OfType<Finding<Surface>.None>().FirstOrDefault();
        if (odd is not null)
        {
            return new Finding<SurfaceSet>.None(odd.Kind, odd.Why, odd.Instead);
        }

        return surfaces.Depth is { } depth && OfDepth(depth) is Finding<Length>.None tooDeep
            ? new Finding<SurfaceSet>.None(tooDeep.Kind, tooDeep.Why, tooDeep.Instead)
            : new Finding<SurfaceSet>.Found(surfaces);
    }

    /// <summary>The depth itself, or out of range.</summary>
    public static Finding<Length> OfDepth(Length depth) => depth > Deepest
        ? new Finding<Length>.None(NoFigure.OutOfRange, $"{Cm(depth)} deep is outside 0 to 10 cm", Asks)
        : new Finding<Length>.Found(depth);

    /// <summary>The film itself, or out of range.</summary>
    public static Finding<Length> OfFilm(Length film) => Outside(film, Thinnest, Thickest)
        ? new Finding<Length>.None(
            NoFigure.OutOfRange,
            string.Create(
                CultureInfo.InvariantCulture, $"a film of {film.Millimetres:0.###} mm is outside 0.05 to 20 mm"),
            Asks)
        : new Finding<Length>.Found(film);

    // A size at the very limit may come out of a conversion a last digit over it.
    private static bool Outside(Length size, Length low, Length high) =>
        size * (1 + 1e-9) < low || size > high * (1 + 1e-9);

    private static Length[] Sizes(Surface surface) => surface switch
    {
        Surface.Panel panel => [panel.Width, panel.Height],
        Surface.Disc disc => [disc.Diameter],
        Surface.Oval oval => [oval.Width, oval.Height],
        Surface.Hexagon hexagon => [hexagon.AcrossFlats],
        _ => throw new ArgumentOutOfRangeException(nameof(surface), surface, "A shape without sizes."),
    };

    private static string Cm(Length size) =>
        string.Create(CultureInfo.InvariantCulture, $"{size.Centimetres:0.###} cm");
}
