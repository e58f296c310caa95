using StudioBot.Craft.Surfaces;
using StudioBot.Craft.Units;

namespace StudioBot.Craft.Pours;

/// <summary>What flows over the rim, as a fraction of the laid film.</summary>
public static class RunOff
{
    private const double Least = 0.5;
    private const double Most = 2;

    /// <summary>The surface that the run-offs of techniques are stated for: a 30 cm square.</summary>
    public static Surface Reference { get; } =
        new Surface.Panel(Length.FromCentimetres(30), Length.FromCentimetres(30));

    /// <summary>A run-off stated for the reference, on this surface.</summary>
    /// <remarks>r·clamp((P/A)/(P/A of a 30 cm square), 0.5, 2): a constant loss per centimetre of rim
    /// (common practice). A 4 in tile doubles it, a 60 × 80 cm panel halves it.</remarks>
    public static double On(Surface surface, double onReference) =>
        onReference * Math.Clamp(FaceOverRim(Reference) / FaceOverRim(surface), Least, Most);

    /// <summary>How much face stands behind a centimetre of rim; what makes two pieces comparable.</summary>
    public static Length FaceOverRim(Surface surface) => surface.Face / surface.Rim;
}
