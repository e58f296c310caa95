using StudioBot.Craft.Surfaces;

namespace StudioBot.Records.Pieces;

/// <summary>A surface as it stands in the file: a disc has its diameter in the width, a hexagon its width across flats.
/// </summary>
internal readonly record struct SurfaceColumns(string Shape, long WidthMicrometres, long? HeightMicrometres)
{
    public static SurfaceColumns Of(Surface surface) => surface switch
    {
        Surface.Panel panel => new("panel", Booked.Micrometres(panel.Width), Booked.Micrometres(panel.Height)),
        Surface.Disc disc => new("disc", Booked.Micrometres(disc.Diameter), null),
        Surface.Oval oval => new("oval", Booked.Micrometres(oval.Width), Booked.Micrometres(oval.Height)),
        Surface.Hexagon hexagon => new("hexagon", Booked.Micrometres(hexagon.AcrossFlats), null),
        _ => throw new ArgumentOutOfRangeException(nameof(surface), surface, "No column for this shape."),
    };

    public Surface From()
    {
        var width = Booked.Length(WidthMicrometres);
        return (Shape, HeightMicrometres) switch
        {
            ("panel", { } height) => new Surface.Panel(width, Booked.Length(height)),
            ("disc", null) => new Surface.Disc(width),
            ("oval", { } height) => new Surface.Oval(width, Booked.Length(height)),
            ("hexagon", null) => new Surface.Hexagon(width),
            _ => throw new InvalidOperationException($"The file holds a {Shape} of a size that no {Shape} has."),
        };
    }
}
