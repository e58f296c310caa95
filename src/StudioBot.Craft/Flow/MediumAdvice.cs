using StudioBot.Craft.Units;

namespace StudioBot.Craft.Flow;

/// <summary>How many parts of base go to one part of varnish on a day of this warmth.</summary>
/// <remarks>Between 3:1 in the cold and 4:1 in the heat (common practice): the middle, 3.5:1, is taken at 21 °C, and
/// from there the share of varnish moves so that the mixture flows alike: by the fall of a water-borne paint, 2.5 % a
/// degree, over the usual slope of a thinner. That reaches 3:1 near 15 °C and 4:1 near 26 °C.</remarks>
public static class MediumAdvice
{
    /// <summary>The most varnish that is common practice: 3:1.</summary>
    public const double ThinnestShare = 1.0 / 4;

    /// <summary>The least: 4:1.</summary>
    public const double ThickestShare = 1.0 / 5;

    private const double MiddleShare = 1 / 4.5;
    private static readonly Temperature Middle = Temperature.FromCelsius(21);

    /// <summary>The share of varnish in the medium, by common practice; never beyond 3:1 and 4:1.</summary>
    public static double UsualShare(Temperature today)
    {
        var fall = OwnFlow.Fall * (today.Celsius - Middle.Celsius);
        return Math.Clamp(MiddleShare + fall / ThinningSlope.Usual.Mean, ThickestShare, ThinnestShare);
    }

    /// <summary>Parts of base to one of varnish.</summary>
    /// <param name="share">The share of varnish, above 0 and below 1.</param>
    public static double Parts(double share) => (1 - share) / share;
}
