using StudioBot.Craft.Units;

namespace StudioBot.Craft.Settling;

/// <summary>How powder sinks in a waiting cup.</summary>
/// <remarks>
/// Stokes: v = (ρ_p − ρ_f)·g·d²/(18η), for Re = ρ_f·v·d/η below 0.1. Above 2 % solids the grains hinder each other,
/// v·(1 − φ)^4.65 (from memory). Flakes fall slower than the sphere of their diameter, and a paint at rest is thicker
/// than its cup figure says, so a speed is an upper bound and a time to stir a short one.
/// </remarks>
/// <param name="Grain">Diameter of the sphere that stands for a grain.</param>
/// <param name="Powder">Density of the powder, not of its heap.</param>
/// <param name="Liquid">Density of the liquid.</param>
/// <param name="AtRest">Viscosity of the liquid at rest; above zero.</param>
/// <param name="Solids">Share of the powder in the volume, 0 to 1; 0 where few grains float apart.</param>
public sealed record Sinking(
    Length Grain, Density Powder, Density Liquid, DynamicViscosity AtRest, double Solids = 0)
{
    /// <summary>Stir again once the grains sank this share of the depth (common practice).</summary>
    public const double Allowed = 0.05;

    private const double StandardGravity = 9.80665;
    private const double CreepingBelow = 0.1;
    private const double HinderedAbove = 0.02;
    private const double Hindrance = 4.65;

    // Longer than any cup waits; also keeps very fine powders within what a time span holds.
    private static readonly TimeSpan Longest = TimeSpan.FromDays(3650);

    /// <summary>How far a grain sinks in so long.</summary>
    /// <returns>Wrong direction for a powder lighter than the liquid: it floats. Out of range where the grain falls too
    /// fast for the formula.</returns>
    public Finding<Length> After(TimeSpan time) => Speed() switch
    {
        Finding<double>.Found speed =>
            new Finding<Length>.Found(Length.FromMetres(speed.Value * time.TotalSeconds)),
        Finding<double>.None none => new Finding<Length>.None(none.Kind, none.Why, none.Instead),
        var other => throw new InvalidOperationException($"No such speed: {other}."),
    };

    /// <summary>How long the cup may stand before it is stirred again: t = allowed·H/v, at most ten years.</summary>
    /// <param name="depth">Of the liquid in the cup.</param>
    /// <param name="allowed">The share of the depth that may clear, 0 to 1.</param>
    /// <returns>As for the way it sinks.</returns>
    public Finding<TimeSpan> StirAfter(Length depth, double allowed = Allowed) => Speed() switch
    {
        Finding<double>.Found speed => new Finding<TimeSpan>.Found(TimeSpan.FromSeconds(
            Math.Min(Longest.TotalSeconds, allowed * depth.Metres / speed.Value))),
        Finding<double>.None none => new Finding<TimeSpan>.None(none.Kind, none.Why, none.Instead),
        var other => throw new InvalidOperationException($"No such speed: {other}."),
    };

    // In metres per second.
    private Finding<double> Speed()
    {
        var heavier = Powder.KilogramsPerCubicMetre - Liquid.KilogramsPerCubicMetre;
        if (heavier <= 0)
        {
            return new Finding<double>.None(
                NoFigure.WrongDirection, "it is no heavier than the liquid and rises instead", "Let it rise, skim it.");
        }

        var hindered = Solids > HinderedAbove ? Math.Pow(1 - Solids, Hindrance) : 1;
        var speed = hindered * heavier * StandardGravity * Math.Pow(Grain.Metres, 2) / (18 * AtRest.PascalSeconds);
        var reynolds = Liquid.KilogramsPerCubicMetre * speed * Grain.Metres / AtRest.PascalSeconds;
        return reynolds < CreepingBelow && speed > 0
            ? new Finding<double>.Found(speed)
            : new Finding<double>.None(
                NoFigure.OutOfRange, "such grains fall too fast for this formula", "Stir right before pouring.");
    }
}
