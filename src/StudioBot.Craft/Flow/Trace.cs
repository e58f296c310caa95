namespace StudioBot.Craft.Flow;

/// <summary>How long a trail stays visible on the surface of a cup: an order, not a viscosity.</summary>
/// <remarks>
/// For the same groove and film a mark levels in a time proportional to viscosity (from memory), so traces are compared
/// with traces only. By eye a reading is good to ±30 % (common practice).
/// </remarks>
public readonly record struct Trace : IComparable<Trace>
{
    /// <summary>How far a reading by eye may be off, as a fraction.</summary>
    public const double Spread = 0.30;

    /// <summary>A trail that stays for so long.</summary>
    /// <exception cref="ArgumentOutOfRangeException">No time at all.</exception>
    public Trace(TimeSpan stays)
    {
        ArgumentOutOfRangeException.ThrowIfLessThanOrEqual(stays, TimeSpan.Zero);
        Stays = stays;
    }

    /// <summary>How long the trail is seen; more than nothing.</summary>
    public TimeSpan Stays { get; }

    /// <inheritdoc/>
    public int CompareTo(Trace other) => Stays.CompareTo(other.Stays);

    public static bool operator <(Trace left, Trace right) => left.Stays < right.Stays;

    public static bool operator >(Trace left, Trace right) => left.Stays > right.Stays;

    public static bool operator <=(Trace left, Trace right) => left.Stays <= right.Stays;

    public static bool operator >=(Trace left, Trace right) => left.Stays >= right.Stays;
}
