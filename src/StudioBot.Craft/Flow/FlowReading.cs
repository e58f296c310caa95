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

    /// <summary>Its natural logarithm: of a cup's viscosity in mm²/s, of a trace's seconds.</summary>
    /// <returns>What the cup's curve says of its seconds, with its caution; or why it can't tell.</returns>
    internal abstract Finding<double> Log();

    /// <summary>A factor of ten, as a logarithm.</summary>
    internal static readonly double Tenfold = Math.Log(10);

    /// <summary>What <see cref="Log"/> comes to; none where its cup can't tell.</summary>
    public double? Told => Log() switch
    {
        Finding<double>.Found found => found.Value,
        Finding<double>.Cautioned cautioned => cautioned.Value,
        _ => null,
    };

    /// <summary>The logarithms it would have with a digit more or fewer in its seconds; without those that its cup
    /// can't tell.</summary>
    internal IEnumerable<double> Tenths() => this switch
    {
        OfCup cup => new[] { 0.1, 10 }.Select(by => (cup with { Time = cup.Time * by }).Told).OfType<double>(),
        _ => Told is { } told ? [told - Tenfold, told + Tenfold] : [],
    };

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

        /// <inheritdoc/>
        internal override Finding<double> Log() => Viscosity switch
        {
            Finding<KinematicViscosity>.None none => new Finding<double>.None(none.Kind, none.Why, none.Instead),
            Finding<KinematicViscosity>.Cautioned edge =>
                new Finding<double>.Cautioned(Log(edge.Value), edge.Caution),
            Finding<KinematicViscosity>.Found found => new Finding<double>.Found(Log(found.Value)),
            var other => throw new InvalidOperationException($"No such finding: {other}."),
        };

        private static double Log(KinematicViscosity viscosity) =>
            Math.Log(viscosity.SquareMillimetresPerSecond);
    }

    /// <summary>Seconds of a trail.</summary>
    /// <param name="Trace">How long it stayed.</param>
    /// <param name="At">The liquid's temperature.</param>
    public sealed record OfTrace(Trace Trace, Temperature? At = null) : FlowReading(At)
    {
        /// <inheritdoc/>
        public override TimeSpan Seconds => Trace.Stays;

        /// <inheritdoc/>
        internal override Finding<double> Log() => new Finding<double>.Found(Math.Log(Seconds.TotalSeconds));
    }
}
