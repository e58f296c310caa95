using StudioBot.Craft.Units;

namespace StudioBot.Craft.Drying;

/// <summary>The curve through the weighings that a piece's ready day rests on, and how far it may be off: between the
/// curves with the shortest and the longest τ that the weighings allow.</summary>
public sealed class DryingBand
{
    private readonly IReadOnlyList<Course> _courses;
    private readonly Mass _water;

    private DryingBand(DryingCurve curve, IReadOnlyList<Course> courses, TimeSpan from, Mass water) =>
        (Curve, _courses, From, _water) = (curve, courses, from, water);

    /// <summary>The curve.</summary>
    public DryingCurve Curve { get; }

    /// <summary>The drying time (equivalent) of the first weighing in it; before, the curve says nothing.</summary>
    public TimeSpan From { get; }

    /// <summary>What the piece weighs at the ready line: 2 % of its water above the curve's end, as much slow solvent
    /// being still to go there as water.</summary>
    public Mass AtLine => Curve.DryMass + ReadyLine.Seen(_water);

    /// <summary>The band of a piece, or why its weighings give none.</summary>
    public static Finding<DryingBand> Of(DryingPiece piece)
    {
        var used = UsableWeighings.Of(piece).Used;
        return DryingFit.Of(used, piece.Deviation, piece.Dry, piece.Water) switch
        {
            Finding<DryingCurve>.Found(var curve) => new Finding<DryingBand>.Found(With(curve, used, piece.Water)),
            Finding<DryingCurve>.Cautioned(var curve, var caution) =>
                new Finding<DryingBand>.Cautioned(With(curve, used, piece.Water), caution),
            Finding<DryingCurve>.None none => new Finding<DryingBand>.None(none.Kind, none.Why, none.Instead),
            var other => throw new InvalidOperationException($"A finding without a road: {other}."),
        };
    }

    /// <summary>What the piece weighs after this drying time (equivalent), and between what.</summary>
    public (Mass Low, Mass Middle, Mass High) At(TimeSpan elapsed)
    {
        var middle = Curve.DryMass + Curve.Left(elapsed);
        List<double> grams = [.. _courses.Select(course => course.At(elapsed)), middle.Grams];
        return (Mass.FromGrams(Math.Max(0, grams.Min())), middle, Mass.FromGrams(grams.Max()));
    }

    private static DryingBand With(DryingCurve curve, IReadOnlyList<Weighing> used, Mass water)
    {
        Weighing[] ordered = [.. used.OrderBy(weighing => weighing.Elapsed)];
        return new DryingBand(
            curve,
            [.. new[] { curve.TauFrom, curve.TauTo }
                .Where(tau => tau > TimeSpan.Zero)
                .Select(tau => LeastSquares.Through(ordered, tau))],
            ordered[0].Elapsed,
            water);
    }

    /// <summary>A course with a given τ, from its first weighing on.</summary>
    internal readonly record struct Course(double Dry, double Loss, TimeSpan First, TimeSpan Tau)
    {
        public double At(TimeSpan elapsed) => Dry + Loss * Math.Exp(-((elapsed - First) / Tau));
    }
}
