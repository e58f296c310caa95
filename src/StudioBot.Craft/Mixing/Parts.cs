using StudioBot.Craft.Units;

namespace StudioBot.Craft.Mixing;

/// <summary>The parts of a whole: x_i = T·p_i/Σp.</summary>
public static class Parts
{
    /// <summary>A volume split by a ratio by volume.</summary>
    /// <exception cref="ArgumentException">The ratio is by mass: <see cref="Basis"/> turns it first.</exception>
    public static IReadOnlyList<Volume> Of(MixRatio ratio, Volume total)
    {
        Demand(ratio, RatioBy.Volume);
        return [.. ratio.Parts.Select((_, part) => total * ratio.Share(part))];
    }

    /// <summary>A mass split by a ratio by mass.</summary>
    /// <exception cref="ArgumentException">The ratio is by volume: <see cref="Basis"/> turns it first.</exception>
    public static IReadOnlyList<Mass> Of(MixRatio ratio, Mass total)
    {
        Demand(ratio, RatioBy.Mass);
        return [.. ratio.Parts.Select((_, part) => total * ratio.Share(part))];
    }

    /// <summary>The whole that goes with so much of one part: three scoops of the first at 3:1 make four.</summary>
    /// <exception cref="ArgumentException">The ratio is by mass.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The ratio has no such part.</exception>
    public static Volume WholeFrom(MixRatio ratio, int part, Volume amount)
    {
        Demand(ratio, RatioBy.Volume);
        return amount / ratio.Share(part);
    }

    /// <summary>The whole that goes with so much of one part, weighed.</summary>
    /// <exception cref="ArgumentException">The ratio is by volume.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The ratio has no such part.</exception>
    public static Mass WholeFrom(MixRatio ratio, int part, Mass amount)
    {
        Demand(ratio, RatioBy.Mass);
        return amount / ratio.Share(part);
    }

    /// <summary>A basis belongs to every ratio; they are never mixed silently.</summary>
    internal static void Demand(MixRatio ratio, RatioBy by)
    {
        if (ratio.By != by)
        {
            throw new ArgumentException($"A ratio by {ratio.By} where one by {by} is needed.", nameof(ratio));
        }
    }
}
