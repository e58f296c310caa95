using StudioBot.Craft.Units;

namespace StudioBot.Craft.Flow;

/// <summary>What to add next.</summary>
/// <param name="What">Which of the two liquids.</param>
/// <param name="More">How much of it.</param>
/// <param name="Low">The low end of the honest range.</param>
/// <param name="High">Its high end; null where the readings set none.</param>
/// <param name="First">What to add before stirring and reading again: the low end, or half where the target lies far
/// beyond the readings.</param>
public sealed record ThinningStep(NextLiquid What, Volume More, Volume Low, Volume? High, Volume First);
