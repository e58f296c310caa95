using StudioBot.Craft.Units;

namespace StudioBot.Craft.Flow;

/// <summary>How a liquid thins as it warms: η(T) = η_ref·exp(B·(1/T − 1/T_ref)), T in kelvin.</summary>
/// <param name="Kelvins">B; water has about 2034 K.</param>
public sealed record TemperatureFactor(double Kelvins)
{
    /// <summary>Water-borne paint, 2 to 3 % a degree (from memory), taken at 20 °C.</summary>
    public static TemperatureFactor WaterBornePaint { get; } = FromFallPerDegree(0.025, Temperature.FromCelsius(20));

    /// <summary>Epoxy resin, 7 to 10 % a degree (from memory), taken at 20 °C.</summary>
    public static TemperatureFactor EpoxyResin { get; } = FromFallPerDegree(0.085, Temperature.FromCelsius(20));

    /// <summary>From a fall per degree, as a fraction, near a temperature: B = fall·T².</summary>
    public static TemperatureFactor FromFallPerDegree(double fall, Temperature near) =>
        new(fall * near.Kelvin * near.Kelvin);

    /// <summary>From two readings of one liquid: B = ln(η₁/η₂)/(1/T₁ − 1/T₂).</summary>
    /// <returns>Undetermined within 2 °C, where readings count as equal, and for a liquid without viscosity.</returns>
    public static Finding<TemperatureFactor> From(
        DynamicViscosity one, Temperature at, DynamicViscosity other, Temperature otherAt)
    {
        if (Math.Abs(at.Celsius - otherAt.Celsius) <= FlowReading.ComparableWithinDegrees
            || one <= default(DynamicViscosity)
            || other <= default(DynamicViscosity))
        {
            return new Finding<TemperatureFactor>.None(
                NoFigure.Undetermined, "the temperatures are too close to tell", "Read again 10 °C warmer or colder.");
        }

        return new Finding<TemperatureFactor>.Found(new TemperatureFactor(
            Math.Log(one.PascalSeconds / other.PascalSeconds) / (1 / at.Kelvin - 1 / otherAt.Kelvin)));
    }

    /// <summary>A viscosity read at one temperature, at another one.</summary>
    public DynamicViscosity At(Temperature wanted, DynamicViscosity read, Temperature readAt) =>
        DynamicViscosity.FromPascalSeconds(read.PascalSeconds * Factor(wanted, readAt));

    /// <summary>The same for what a cup measured.</summary>
    public KinematicViscosity At(Temperature wanted, KinematicViscosity read, Temperature readAt) =>
        KinematicViscosity.FromSquareMillimetresPerSecond(read.SquareMillimetresPerSecond * Factor(wanted, readAt));

    private double Factor(Temperature wanted, Temperature readAt) =>
        Math.Exp(Kelvins * (1 / wanted.Kelvin - 1 / readAt.Kelvin));
}
