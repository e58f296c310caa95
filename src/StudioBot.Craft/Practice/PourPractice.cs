using StudioBot.Craft.Mixing;
using StudioBot.Craft.Pours;
using StudioBot.Craft.Units;

namespace StudioBot.Craft.Practice;

/// <summary>What a pour takes where nobody says otherwise.</summary>
/// <param name="Techniques">The named ways to pour; at least one.</param>
/// <param name="UsualTechnique">Taken where a message names none; one of <paramref name="Techniques"/>.</param>
/// <param name="UsualColours">How many colours, 1 or more, where a message counts none.</param>
/// <param name="CupWaste">What stays in each cup, shown as its own line.</param>
/// <param name="SideFilm">The wet film of paint on the sides.</param>
/// <param name="MediumRatio">Base to thinner in a cold room, where the base is stiff.</param>
/// <param name="WarmMediumRatio">Base to thinner in the heat.</param>
/// <param name="PowderPerMedium">Powder to a millilitre of medium, as the only colourant.</param>
/// <param name="MostWater">The share of a paint's volume above which added water stretches the binder, 0 to 1.</param>
/// <param name="PriorWeight">How many own pours the practice values are worth in learning; above 0.</param>
/// <param name="Spread">How far one pour's need scatters, as a film (one standard deviation).</param>
/// <param name="Tools">What is measured with.</param>
public sealed record PourPractice(
    IReadOnlyList<Sourced<Technique>> Techniques,
    Sourced<Technique> UsualTechnique,
    Sourced<int> UsualColours,
    Sourced<Volume> CupWaste,
    Sourced<Length> SideFilm,
    Sourced<MixRatio> MediumRatio,
    Sourced<MixRatio> WarmMediumRatio,
    Sourced<Density> PowderPerMedium,
    Sourced<double> MostWater,
    Sourced<double> PriorWeight,
    Sourced<Length> Spread,
    PourTools Tools);
