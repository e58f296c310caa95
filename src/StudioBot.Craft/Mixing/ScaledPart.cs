using StudioBot.Craft.Units;

namespace StudioBot.Craft.Mixing;

/// <summary>One part of a scaled recipe: its volume, its mass, or both where the density is known.</summary>
/// <param name="Material">The material's name.</param>
/// <param name="Volume">To be measured; null for a weighed part of unknown density.</param>
/// <param name="Mass">To be weighed; null for a measured part of unknown density.</param>
public sealed record ScaledPart(string Material, Volume? Volume, Mass? Mass);
