using StudioBot.Craft.Units;

namespace StudioBot.Craft.Mixing;

/// <summary>So much of a liquid or powder of known density.</summary>
/// <param name="Mass">What it weighs.</param>
/// <param name="Density">Its density; above zero.</param>
public sealed record WeighedPart(Mass Mass, Density Density);
