using StudioBot.Craft.Units;

namespace StudioBot.Craft.Flow;

/// <summary>The viscosity of a blend before it is stirred; it only ranks and brackets, a measured reading
/// decides.</summary>
/// <remarks>No blending rule holds for particles or strongly non-Newtonian flow (ASTM D7152 says so of
/// itself).</remarks>
public static class Blend
{
    // Refutas as quoted from Maples 2000.
    private const double Slope = 14.534;
    private const double Offset = 10.975;
    private const double Shift = 0.8;

    private const string TooThin = "thinner than any liquid this rule knows";
    private const string Measure = "Measure the blend in a cup.";

    private static readonly KinematicViscosity Thinnest = KinematicViscosity.FromSquareMillimetresPerSecond(0.2);

    /// <summary>Log-linear mixing (Arrhenius) by volume: ln η = Σφ·ln η. The default for paint with medium.</summary>
    /// <exception cref="ArgumentException">Nothing was blended, or a liquid without viscosity.</exception>
    public static DynamicViscosity LogLinear(IReadOnlyList<(DynamicViscosity Viscosity, Volume Volume)> parts)
    {
        var whole = parts.Sum(part => part.Volume.Millilitres);
        if (whole <= 0 || parts.Any(part => part.Viscosity <= default(DynamicViscosity)))
        {
            throw new ArgumentException("A blend of liquids, each with a viscosity.", nameof(parts));
        }

        return DynamicViscosity.FromPascalSeconds(Math.Exp(parts.Sum(part =>
            part.Volume.Millilitres / whole * Math.Log(part.Viscosity.PascalSeconds))));
    }

    /// <summary>Refutas by mass: the blending numbers average, ν = exp(exp((VBN − 10.975)/14.534)) − 0.8.</summary>
    /// <returns>Out of range at 0.2 mm²/s and below, where the double logarithm has no value.</returns>
    /// <exception cref="ArgumentException">Nothing was blended.</exception>
    public static Finding<KinematicViscosity> Refutas(IReadOnlyList<(KinematicViscosity Viscosity, Mass Mass)> parts)
    {
        var whole = parts.Sum(part => part.Mass.Grams);
        if (whole <= 0)
        {
            throw new ArgumentException("A blend weighs something.", nameof(parts));
        }

        if (parts.Any(part => part.Viscosity <= Thinnest))
        {
            return new Finding<KinematicViscosity>.None(NoFigure.OutOfRange, TooThin, Measure);
        }

        var number = parts.Sum(part => part.Mass.Grams / whole * Number(part.Viscosity));
        return new Finding<KinematicViscosity>.Found(KinematicViscosity.FromSquareMillimetresPerSecond(
            Math.Exp(Math.Exp((number - Offset) / Slope)) - Shift));
    }

    /// <summary>The viscosity blending number, VBN = 14.534·ln(ln(ν + 0.8)) + 10.975; it has no unit.</summary>
    /// <returns>Out of range at 0.2 mm²/s and below.</returns>
    public static Finding<double> BlendingNumber(KinematicViscosity viscosity) => viscosity > Thinnest
        ? new Finding<double>.Found(Number(viscosity))
        : new Finding<double>.None(NoFigure.OutOfRange, TooThin, Measure);

    private static double Number(KinematicViscosity viscosity) =>
        Slope * Math.Log(Math.Log(viscosity.SquareMillimetresPerSecond + Shift)) + Offset;
}
