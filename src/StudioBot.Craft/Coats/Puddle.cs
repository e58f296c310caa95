using StudioBot.Craft.Units;

namespace StudioBot.Craft.Coats;

/// <summary>A free puddle of resin on a level face.</summary>
/// <param name="Density">Of the mixed resin, above zero.</param>
/// <param name="NewtonsPerMetre">Surface tension; 0.045 for epoxy (from memory).</param>
/// <param name="ContactDegrees">Contact angle at the edge, 0 to 180°; 90 at a sharp rim (from memory).</param>
public sealed record Puddle(Density Density, double NewtonsPerMetre = 0.045, double ContactDegrees = 90)
{
    private const double Gravity = 9.80665;

    /// <summary>The height it levels at by itself: 2·√(γ/(ρ·g))·sin(θ/2), the capillary puddle (from memory).</summary>
    public Length LevelHeight => Length.FromMetres(
        2 * Math.Sqrt(NewtonsPerMetre / (Density.KilogramsPerCubicMetre * Gravity))
        * Math.Sin(ContactDegrees / 2 * Math.PI / 180));
}
