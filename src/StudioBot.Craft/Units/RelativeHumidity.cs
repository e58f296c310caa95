namespace StudioBot.Craft.Units;

/// <summary>How much of the water vapour it could hold the air does hold, 0 to 100 %.</summary>
public readonly record struct RelativeHumidity
{
    private RelativeHumidity(double percent) => Percent = percent is >= 0 and <= 100
        ? percent
        : throw new ArgumentOutOfRangeException(nameof(percent), percent, "Humidity is 0 to 100 %.");

    /// <summary>In percent, 0 to 100.</summary>
    public double Percent { get; }

    /// <summary>As a share, 0 to 1.</summary>
    public double Share => Percent / 100;

    /// <summary>From percent.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not a number or outside 0 to 100.</exception>
    public static RelativeHumidity FromPercent(double value) => new(value);
}
