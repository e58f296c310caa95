namespace StudioBot.Craft.Units;

/// <summary>How fast a turntable goes round.</summary>
public readonly record struct RotationalSpeed
{
    private const double SecondsPerMinute = 60;

    private RotationalSpeed(double perMinute) =>
        RevolutionsPerMinute = Quantity.Checked(perMinute, 0, nameof(RotationalSpeed));

    /// <summary>In revolutions per minute.</summary>
    public double RevolutionsPerMinute { get; }

    /// <summary>In radians per second.</summary>
    public double RadiansPerSecond => 2 * Math.PI * RevolutionsPerMinute / SecondsPerMinute;

    /// <summary>From revolutions per minute.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not a number, infinite or negative.</exception>
    public static RotationalSpeed FromRevolutionsPerMinute(double value) => new(value);
}
