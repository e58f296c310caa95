using StudioBot.Craft.Surfaces;
using StudioBot.Craft.Units;

namespace StudioBot.Chat.Reading.Values;

/// <summary>What surfaces mean, by key: sizes in cm, areas in cm².</summary>
internal static class SurfaceMeaning
{
    /// <summary>The shape, the full sizes, the count and the whole area, sides included.</summary>
    public static IEnumerable<Meaning> Of(SurfaceSet value)
    {
        if (value.Groups.Count > 1)
        {
            yield return new("surfaces", string.Join('+', value.Groups.Select(Short)));
        }
        else
        {
            yield return new("shape", Shape(value.Groups[0].Surface));
            foreach (var meaning in SizeMeanings(value.Groups[0].Surface))
            {
                yield return meaning;
            }
        }

        if (value.Depth is { } depth)
        {
            yield return new("depth_cm", Figures.Of(depth.Centimetres));
        }

        yield return new("count", Figures.Of(value.Count));
        yield return new("area_cm2", Figures.Of(value.Total.SquareCentimetres));
    }

    // 2*square 10.
    private static string Short(SurfaceGroup group)
    {
        var sizes = Sizes(group.Surface).Select(size => Figures.Of(size.Centimetres));
        return $"{group.Count}*{Shape(group.Surface)} {string.Join('x', sizes)}";
    }

    private static string Shape(Surface surface) => surface switch
    {
        Surface.Panel { IsSquare: true } => "square",
        Surface.Panel => "rect",
        Surface.Disc => "round",
        Surface.Oval => "oval",
        _ => "hexagon",
    };

    private static IEnumerable<Length> Sizes(Surface surface) => surface switch
    {
        Surface.Panel { IsSquare: true } square => [square.Width],
        Surface.Panel panel => [panel.Width, panel.Height],
        Surface.Disc disc => [disc.Diameter],
        Surface.Oval oval => [oval.Width, oval.Height],
        Surface.Hexagon hexagon => [hexagon.AcrossFlats],
        _ => [],
    };

    private static IEnumerable<Meaning> SizeMeanings(Surface surface) => surface switch
    {
        Surface.Disc disc => [new("diameter_cm", Figures.Of(disc.Diameter.Centimetres))],
        Surface.Hexagon hexagon => [new("width_cm", Figures.Of(hexagon.AcrossFlats.Centimetres))],
        Surface.Panel panel => Sides(panel.Width, panel.Height),
        Surface.Oval oval => Sides(oval.Width, oval.Height),
        _ => [],
    };

    private static IEnumerable<Meaning> Sides(Length width, Length height) =>
        [new("width_cm", Figures.Of(width.Centimetres)), new("height_cm", Figures.Of(height.Centimetres))];
}
