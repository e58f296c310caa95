using StudioBot.Craft.Surfaces;
using StudioBot.Craft.Units;

namespace StudioBot.Craft.Coats;

/// <summary>What is to be coated, and how thickly.</summary>
/// <param name="Surfaces">The pieces; with a depth where the sides get resin too.</param>
/// <param name="Film">Resin left on the face by one coat, above zero.</param>
/// <param name="RunOff">What flows over the edge, as a share of what stays: 0 to 0.5.</param>
/// <param name="SideFilm">Resin left on the sides by one coat; unknown: 0.5 mm (common practice).</param>
/// <param name="Coats">1 or more, all alike.</param>
public sealed record CoatWish(SurfaceSet Surfaces, Length Film, double RunOff, Length? SideFilm = null, int Coats = 1);
