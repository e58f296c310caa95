namespace StudioBot.Craft.Flow;

/// <summary>Which times of a flow cup count.</summary>
/// <param name="AtLeast">Below it there is no figure.</param>
/// <param name="From">From here on without a caution: the standard's own range.</param>
/// <param name="To">Up to here without a caution.</param>
/// <param name="AtMost">Above it there is no figure.</param>
public sealed record DrainTimes(TimeSpan AtLeast, TimeSpan From, TimeSpan To, TimeSpan AtMost)
{
    /// <summary>A range without edges.</summary>
    public DrainTimes(TimeSpan from, TimeSpan to)
        : this(from, from, to, to)
    {
    }
}
