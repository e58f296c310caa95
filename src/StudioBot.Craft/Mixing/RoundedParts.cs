using StudioBot.Craft.Units;

namespace StudioBot.Craft.Mixing;

/// <summary>Parts that a tool can measure, and what the rounding costs.</summary>
/// <param name="Parts">Each a whole number of steps, at least one, in the order of the ratio.</param>
/// <param name="WorstError">The worst over pairs of |(x_i/x_j)/(p_i/p_j) − 1|; 0 where the ratio is kept.</param>
public sealed record RoundedParts(IReadOnlyList<Volume> Parts, double WorstError)
{
    /// <summary>Off by more than this, a resin is weighed instead (common practice).</summary>
    public const double ResinLimit = 0.02;

    /// <summary>All parts together.</summary>
    public Volume Total => Parts.Aggregate(default(Volume), (sum, part) => sum + part);

    /// <summary>Whether this is near enough for resin; otherwise: weigh it instead.</summary>
    public bool DoesForResin => WorstError <= ResinLimit;
}
