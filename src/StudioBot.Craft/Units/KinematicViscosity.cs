namespace StudioBot.Craft.Units;

/// <summary>What a flow cup measures: viscosity over density.</summary>
public readonly record struct KinematicViscosity : IComparable<KinematicViscosity>
{
    private KinematicViscosity(double squareMillimetresPerSecond) =>
        SquareMillimetresPerSecond = Quantity.Checked(squareMillimetresPerSecond, 0, nameof(KinematicViscosity));

    /// <summary>In square millimetres per second (centistokes).</summary>
    public double SquareMillimetresPerSecond { get; }

    /// <summary>From square millimetres per second (centistokes).</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not a number, infinite or negative.</exception>
    public static KinematicViscosity FromSquareMillimetresPerSecond(double value) => new(value);

    /// <inheritdoc/>
    public int CompareTo(KinematicViscosity other) =>
        SquareMillimetresPerSecond.CompareTo(other.SquareMillimetresPerSecond);

    public static bool operator <(KinematicViscosity left, KinematicViscosity right) =>
        left.SquareMillimetresPerSecond < right.SquareMillimetresPerSecond;

    public static bool operator >(KinematicViscosity left, KinematicViscosity right) =>
        left.SquareMillimetresPerSecond > right.SquareMillimetresPerSecond;

    public static bool operator <=(KinematicViscosity left, KinematicViscosity right) =>
        left.SquareMillimetresPerSecond <= right.SquareMillimetresPerSecond;

    public static bool operator >=(KinematicViscosity left, KinematicViscosity right) =>
        left.SquareMillimetresPerSecond >= right.SquareMillimetresPerSecond;

    /// <summary>η = ν·ρ.</summary>
    public static DynamicViscosity operator *(KinematicViscosity kinematic, Density density) =>
        DynamicViscosity.FromMillipascalSeconds(kinematic.SquareMillimetresPerSecond * density.GramsPerMillilitre);
}
