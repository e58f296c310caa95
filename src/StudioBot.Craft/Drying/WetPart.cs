using StudioBot.Craft.Units;

namespace StudioBot.Craft.Drying;

/// <summary>One part of a wet mix and what of it stays when it is dry.</summary>
public sealed record WetPart
{
    /// <summary>So much of something that keeps this share of its mass.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The share is outside 0 to 1.</exception>
    public WetPart(Mass mass, double nonVolatile)
    {
        Mass = mass;
        NonVolatile = nonVolatile is >= 0 and <= 1
            ? nonVolatile
            : throw new ArgumentOutOfRangeException(nameof(nonVolatile), nonVolatile, "A share is 0 to 1.");
    }

    /// <summary>How much of it is in the mix.</summary>
    public Mass Mass { get; }

    /// <summary>Non-volatile matter by mass (NV, as ISO 3251 determines it), 0 to 1: water 0, powder 1.</summary>
    public double NonVolatile { get; }
}
