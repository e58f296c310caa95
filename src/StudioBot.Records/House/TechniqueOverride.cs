using StudioBot.Craft.Units;

namespace StudioBot.Records.House;

/// <summary>What this studio found for a technique; it lies over what the trade assumes.</summary>
/// <param name="Name">The technique's name.</param>
/// <param name="Laid">The laid wet film, 0.05 to 20 mm; none leaves the trade's.</param>
/// <param name="RunOff">Run-off as a fraction of the laid film, 0 to 1; none leaves the trade's.</param>
public sealed record TechniqueOverride(string Name, Length? Laid, double? RunOff);
