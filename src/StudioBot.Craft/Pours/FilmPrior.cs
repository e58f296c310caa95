using StudioBot.Craft.Surfaces;
using StudioBot.Craft.Units;

namespace StudioBot.Craft.Pours;

/// <summary>What is believed of the need per face before the studio's own pours speak.</summary>
/// <param name="Mean">The need expected.</param>
/// <param name="Weight">How many pours that belief is worth; above zero.</param>
/// <param name="Spread">How far one pour scatters, as a standard deviation; above zero.</param>
public sealed record FilmPrior(Length Mean, double Weight, Length Spread)
{
    /// <summary>Worth 4 pours (common practice).</summary>
    public const double UsualWeight = 4;

    /// <summary>0.5 mm (common practice).</summary>
    public static Length UsualSpread { get; } = Length.FromMillimetres(0.5);

    /// <summary>The technique's film and run-off on this surface: q = h·(1 + r).</summary>
    public static FilmPrior Of(Technique technique, Surface surface) => new(
        technique.Laid.Usual * (1 + RunOff.On(surface, technique.RunOff)), UsualWeight, UsualSpread);
}
