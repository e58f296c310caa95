using StudioBot.Craft.Units;

namespace StudioBot.Craft.Air;

/// <summary>How far a surface is above the dew point; counted from the surface, not from the air.</summary>
/// <param name="DewPoint">Where the air would wet it.</param>
/// <param name="Surface">How warm the surface is, or is taken to be.</param>
/// <param name="Assumed">Nobody measured the surface: it was guessed from the air.</param>
public sealed record DewMargin(Temperature DewPoint, Temperature Surface, bool Assumed)
{
    /// <summary>
    /// The least margin that resin may be poured at, in degrees (three coating texts quote it for ISO 8502-4).
    /// </summary>
    public const double LeastDegrees = 3;

    /// <summary>Below this margin a hygrometer's own ±3 % matters, in degrees (common practice).</summary>
    public const double EaseDegrees = 5;

    // A dew point that is computed back from its own vapour is off by the last digits.
    private const int Decimals = 9;

    /// <summary>Surface less dew point, in degrees; below zero it is wet.</summary>
    public double Degrees => Math.Round(Surface.Celsius - DewPoint.Celsius, Decimals);

    /// <summary>Enough to pour on.</summary>
    public bool IsEnough => Degrees >= LeastDegrees;

    /// <summary>Enough, with room for the hygrometer's error.</summary>
    public bool IsAmple => Degrees >= EaseDegrees;
}
