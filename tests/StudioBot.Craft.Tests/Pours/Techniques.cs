using StudioBot.Craft.Pours;
using StudioBot.Craft.Units;

namespace StudioBot.Craft.Tests.Pours;

/// <summary>Techniques as common practice has them, low confidence; no source.</summary>
internal static class Techniques
{
    public static Technique Bloom { get; } = new(
        "bloom",
        [],
        [
            new Layer(LayerKind.Base, Film(1.5, 2.0, 2.5)),
            new Layer(LayerKind.Colours, Film(0.3, 0.45, 0.8)),
            new Layer(LayerKind.Activator, Film(0.03, 0.05, 0.12)),
        ],
        Film(2.0, 2.5, 3.2),
        0.20,
        0.10,
        0.35);

    public static Technique RingPour { get; } = new(
        "ring pour", [], [new Layer(LayerKind.Colours, Film(2.2, 2.8, 3.5))], Film(2.2, 2.8, 3.5), 0.20, 0.10, 0.30);

    private static FilmRange Film(double low, double usual, double high) => new(
        Length.FromMillimetres(low), Length.FromMillimetres(usual), Length.FromMillimetres(high));
}
