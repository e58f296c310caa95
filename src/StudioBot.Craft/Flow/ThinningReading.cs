using StudioBot.Craft.Units;

namespace StudioBot.Craft.Flow;

/// <summary>A reading, and how much had been added in all by then.</summary>
/// <param name="AddedInAll">Since the first reading; nothing for the first.</param>
/// <param name="Reading">Stirred, at one temperature.</param>
public sealed record ThinningReading(Volume AddedInAll, FlowReading Reading);
