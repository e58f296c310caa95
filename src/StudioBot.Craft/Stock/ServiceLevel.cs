namespace StudioBot.Craft.Stock;

/// <summary>How often the shelf shall last until the order comes.</summary>
public readonly record struct ServiceLevel
{
    private ServiceLevel(double share) => Share = share is > 0 and < 1
        ? share
        : throw new ArgumentOutOfRangeException(nameof(share), share, "A service level lies strictly between 0 and 1.");

    /// <summary>19 times of 20 (common practice).</summary>
    public static ServiceLevel Usual { get; } = new(0.95);

    /// <summary>As a share of all orders, between 0 and 1.</summary>
    public double Share { get; }

    /// <summary>The normal quantile: how many deviations of safety it takes (95 %: 1.6449).</summary>
    public double Deviations => NormalCurve.Quantile(Share);

    /// <summary>From a share.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not strictly between 0 and 1.</exception>
    public static ServiceLevel FromShare(double value) => new(value);

    /// <summary>From deviations of safety, as tables print them: 1.645.</summary>
    public static ServiceLevel FromDeviations(double z) => new(NormalCurve.Below(z));
}
