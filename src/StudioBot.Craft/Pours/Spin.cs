using StudioBot.Craft.Surfaces;
using StudioBot.Craft.Units;

namespace StudioBot.Craft.Pours;

/// <summary>Spinning out: what a level turntable leaves of a film that already reaches the rim.</summary>
/// <remarks>
/// Emslie, Bonner and Peck 1958: h(t) = h₀/√(1 + 4ρω²h₀²t/(3η)). Newtonian, no drying, no rim bead, no corners, no
/// gravity or surface tension. Real films end thinner, for paint thins under shear; at low speed nothing may leave.
/// </remarks>
/// <param name="Density">Of the paint.</param>
/// <param name="Speed">Of the turntable; above zero.</param>
/// <param name="Viscosity">Of the paint; above zero.</param>
public sealed record Spin(Density Density, RotationalSpeed Speed, DynamicViscosity Viscosity)
{
    /// <summary>Above so many times its weight paint splashes (common practice).</summary>
    public const double SplashesAbove = 1;

    /// <summary>Above so many times its weight no spin is recommended (common practice).</summary>
    public const double RefusedAbove = 3;

    private const double StandardGravity = 9.80665;

    /// <summary>An acrylic paint's 1.05 g/mL: a maker's sheet has 1.04, 1.03 to 1.10 is from memory.</summary>
    public static Density UsualDensity { get; } = Density.FromGramsPerMillilitre(1.05);

    /// <summary>The thin end of pouring paints, 0.3 Pa·s (common practice).</summary>
    public static DynamicViscosity ThinViscosity { get; } = DynamicViscosity.FromPascalSeconds(0.3);

    /// <summary>The thick end of pouring paints, 3 Pa·s (common practice).</summary>
    public static DynamicViscosity ThickViscosity { get; } = DynamicViscosity.FromPascalSeconds(3);

    /// <summary>A pouring paint's 1.0 Pa·s, 0.3 to 3 (common practice).</summary>
    public static DynamicViscosity UsualViscosity { get; } = DynamicViscosity.FromPascalSeconds(1.0);

    /// <summary>The film left after so long.</summary>
    public Length FilmAfter(Length start, TimeSpan time) => Length.FromMetres(
        start.Metres / Math.Sqrt(1 + Thinning * Math.Pow(start.Metres, 2) * time.TotalSeconds));

    /// <summary>How long until the film is this thin: t = 3η/(4ρω²)·(1/h² − 1/h₀²).</summary>
    /// <returns>Wrong direction where the film is already thinner; out of range for no film or no turning.</returns>
    public Finding<TimeSpan> TimeTo(Length start, Length end)
    {
        if (end > start)
        {
            return new Finding<TimeSpan>.None(
                NoFigure.WrongDirection, "spinning makes no film thicker", "Pour more first.");
        }

        var seconds = (Math.Pow(end.Metres, -2) - Math.Pow(start.Metres, -2)) / Thinning;
        return seconds <= TimeSpan.MaxValue.TotalSeconds / 2
            ? new Finding<TimeSpan>.Found(TimeSpan.FromSeconds(seconds))
            : new Finding<TimeSpan>.None(
                NoFigure.OutOfRange, "spinning never gets there", "Spin faster, or pour less.");
    }

    /// <summary>What any film is below after so long, however thick it was: √(3η/(4ρω²t)).</summary>
    /// <exception cref="ArgumentOutOfRangeException">No time, or no turning: then there is no such bound.</exception>
    public Length ThinLimit(TimeSpan time) => Length.FromMetres(1 / Math.Sqrt(Thinning * time.TotalSeconds));

    /// <summary>The share that leaves over the rim, 0 to 1.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The end is thicker than the start.</exception>
    public static double ThrownOff(Length start, Length end)
    {
        ArgumentOutOfRangeException.ThrowIfGreaterThan(end, start);
        return 1 - end / start;
    }

    /// <summary>How hard the rim pulls, in multiples of the paint's weight: ω²R/g.</summary>
    /// <returns>A caution above 1; out of range above 3, which no studio should spin at.</returns>
    public Finding<double> RimPull(Length radius)
    {
        var pull = Math.Pow(Speed.RadiansPerSecond, 2) * radius.Metres / StandardGravity;
        return pull switch
        {
            > RefusedAbove => new Finding<double>.None(
                NoFigure.OutOfRange, "the rim would pull at more than three times the weight", "Spin slower."),
            > SplashesAbove => new Finding<double>.Cautioned(
                pull, "paint flies off: guard up, tile clamped, face away"),
            _ => new Finding<double>.Found(pull),
        };
    }

    /// <summary>The speed at which the rim pulls so many times the paint's weight: ω = √(pull·g/R).</summary>
    /// <param name="radius">From the centre to the rim, above zero.</param>
    /// <param name="pull">In multiples of the weight, above zero: <see cref="SplashesAbove"/>.</param>
    public static RotationalSpeed SpeedFor(Length radius, double pull) => RotationalSpeed.FromRevolutionsPerMinute(
        60 / (2 * Math.PI) * Math.Sqrt(pull * StandardGravity / radius.Metres));

    /// <summary>From the centre to the farthest point: half the diagonal of a panel, whose corners stay
    /// thick.</summary>
    public static Length RimRadius(Surface surface) => surface switch
    {
        Surface.Panel panel => Length.FromMetres(Math.Sqrt(
            Math.Pow(panel.Width.Metres, 2) + Math.Pow(panel.Height.Metres, 2))) / 2,
        Surface.Disc disc => disc.Diameter / 2,
        Surface.Oval oval => (oval.Width > oval.Height ? oval.Width : oval.Height) / 2,
        Surface.Hexagon hexagon => hexagon.AcrossFlats / Math.Sqrt(3),
        _ => throw new ArgumentOutOfRangeException(nameof(surface), surface, "A shape without a rim."),
    };

    /// <summary>The viscosity that explains what a logged spin left; better than the usual one.</summary>
    /// <returns>Undetermined where nothing left, or everything did.</returns>
    public static Finding<DynamicViscosity> ViscosityBehind(
        Length start, Length end, TimeSpan time, Density density, RotationalSpeed speed)
    {
        if (end >= start || end <= default(Length) || time <= TimeSpan.Zero)
        {
            return new Finding<DynamicViscosity>.None(
                NoFigure.Undetermined, "nothing was thrown off, or nothing is left", "Weigh before and after a spin.");
        }

        var drive = 4 * density.KilogramsPerCubicMetre * Math.Pow(speed.RadiansPerSecond, 2) / 3;
        return new Finding<DynamicViscosity>.Found(DynamicViscosity.FromPascalSeconds(
            drive * time.TotalSeconds / (Math.Pow(end.Metres, -2) - Math.Pow(start.Metres, -2))));
    }

    // 4ρω²/(3η), per square metre and second.
    private double Thinning => 4 * Density.KilogramsPerCubicMetre * Math.Pow(Speed.RadiansPerSecond, 2)
        / (3 * Viscosity.PascalSeconds);
}
