namespace StudioBot.Craft.Costs;

/// <summary>Hands-on time, and what an hour and a price are reckoned at until a maker says otherwise (common
/// practice).</summary>
public static class UsualWork
{
    private static readonly TimeSpan SettingUp = TimeSpan.FromMinutes(30);
    private static readonly TimeSpan PouringOne = TimeSpan.FromMinutes(15);
    private static readonly TimeSpan MixingCoat = TimeSpan.FromMinutes(20);
    private static readonly TimeSpan CoatingOne = TimeSpan.FromMinutes(5);

    /// <summary>What an hour of work is worth, in any currency.</summary>
    public static Money RatePerHour { get; } = new(15_00);

    /// <summary>The studio's rent, heat and light for an hour of work.</summary>
    public static Money OverheadPerHour { get; } = new(3_00);

    /// <summary>What is left over, as a share of the cost.</summary>
    public const decimal Markup = 0.50m;

    /// <summary>Setting up once and pouring each; mixing once a coat and coating each. Waiting is not work.</summary>
    /// <param name="pieces">1 or more.</param>
    /// <param name="coats">Of resin on each; 0 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">No piece, or fewer coats than none.</exception>
    public static TimeSpan On(int pieces, int coats)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(pieces, 1);
        ArgumentOutOfRangeException.ThrowIfNegative(coats);
        return SettingUp + pieces * PouringOne + coats * (MixingCoat + pieces * CoatingOne);
    }
}
