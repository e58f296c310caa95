using StudioBot.Craft.Units;

namespace StudioBot.Craft.Flow;

/// <summary>How a mixture flows: a cup's seconds or a trace.</summary>
/// <param name="At">The liquid's temperature; null where nobody said. Readings compare within 2 °C.</param>
public abstract record FlowReading(Temperature? At)
{
    /// <summary>Two readings further apart than this are not compared without correcting them.</summary>
    public const double ComparableWithinDegrees = 2;

    /// <summary>How long the cup drained, or the trail stayed.</summary>
    public abstract TimeSpan Seconds { get; }

    /// <summary>Seconds of a cup.</summary>
    /// <param name="Cup">Which one.</param>
    /// <param name="Time">Until the stream breaks.</param>
    /// <param name="At">The liquid's temperature.</param>
    public sealed record OfCup(FlowCup Cup, TimeSpan Time, Temperature? At = null) : FlowReading(At)
    {
        /// <inheritdoc/>
        public override TimeSpan Seconds => Time;

        /// <summary>What the cup's curve makes of it.</summary>
        public Finding<KinematicViscosity> Viscosity => CupCurves.Viscosity(Cup, Time);
    }

    /// <summary>Seconds of a trail.</summary>
    /// <param name="Trace">How long it stayed.</param>
    /// <param name="At">The liquid's temperature.</param>
    public sealed record OfTrace(Trace Trace, Temperature? At = null) : FlowReading(At)
    {
        /// <inheritdoc/>
        public override TimeSpan Seconds => Trace.Stays;
    }
}
