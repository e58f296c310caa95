using StudioBot.Craft.Mixing;
using StudioBot.Craft.Pours;
using StudioBot.Craft.Units;

namespace StudioBot.Craft.Practice;

/// <summary>A two-part resin as practice knows it; the product's own sheet beats every figure here.</summary>
/// <param name="Name">As people type it.</param>
/// <param name="OtherNames">Other words for it.</param>
/// <param name="Ratio">A to B, with its basis.</param>
/// <param name="DensityA">Of the resin.</param>
/// <param name="DensityB">Of the hardener.</param>
/// <param name="PotLife">How long the cup may wait, with its sample.</param>
/// <param name="TimesAt">The temperature that working time, window and cures stand for.</param>
/// <param name="WorkingTime">How long it flows once it is spread.</param>
/// <param name="RecoatOpens">When the next coat may go on.</param>
/// <param name="RecoatCloses">When it no longer bonds by itself; announced by the early end.</param>
/// <param name="Handling">When the piece may be moved.</param>
/// <param name="FullCure">When it is done.</param>
/// <param name="Cups">How much may stand in one cup.</param>
/// <param name="FloodFilm">The usual coat.</param>
/// <param name="SealFilm">A thin coat under or between.</param>
/// <param name="SideFilm">What stays on the sides.</param>
/// <param name="RunOff">What flows over the edge, as a share of the film laid.</param>
public sealed record ResinSystem(
    string Name,
    IReadOnlyList<string> OtherNames,
    Sourced<MixRatio> Ratio,
    Sourced<Density> DensityA,
    Sourced<Density> DensityB,
    Sourced<SheetPotLife> PotLife,
    Sourced<Temperature> TimesAt,
    Sourced<TimeSpan> WorkingTime,
    Sourced<TimeRange> RecoatOpens,
    Sourced<TimeRange> RecoatCloses,
    Sourced<TimeSpan> Handling,
    Sourced<TimeSpan> FullCure,
    Sourced<SafeCups> Cups,
    Sourced<FilmRange> FloodFilm,
    Sourced<FilmRange> SealFilm,
    Sourced<Length> SideFilm,
    Sourced<ShareRange> RunOff);
