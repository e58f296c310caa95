namespace StudioBot.Craft.Pours;

/// <summary>A named way to pour, with the films of its layers and what runs off.</summary>
/// <param name="Name">As people type it: bloom, swipe.</param>
/// <param name="OtherNames">Other words for it.</param>
/// <param name="Layers">From the bottom up; at least one.</param>
/// <param name="Laid">The laid wet film of all layers together.</param>
/// <param name="RunOff">Usual run-off as a fraction of the laid film, on a 30 cm square.</param>
/// <param name="RunOffLow">The low end of the run-off.</param>
/// <param name="RunOffHigh">The high end of the run-off.</param>
public sealed record Technique(
    string Name,
    IReadOnlyList<string> OtherNames,
    IReadOnlyList<Layer> Layers,
    FilmRange Laid,
    double RunOff,
    double RunOffLow,
    double RunOffHigh)
{
    /// <summary>The share of the laid film that this kind of layer makes, 0 to 1.</summary>
    public double Share(LayerKind kind)
    {
        double ofKind = 0, all = 0;
        foreach (var layer in Layers)
        {
            ofKind += layer.Kind == kind ? layer.Film.Usual.Millimetres : 0;
            all += layer.Film.Usual.Millimetres;
        }

        return ofKind / all;
    }
}
