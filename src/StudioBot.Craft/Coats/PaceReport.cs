namespace StudioBot.Craft.Coats;

/// <summary>What one report says of a resin's pace: it was so by then and, where somebody had looked before, not so
/// yet at that look.</summary>
/// <param name="Ratio">The time gone when it was seen over the sheet's; above zero.</param>
/// <param name="NotYet">The same at the last look that found it not so; above zero and below <paramref name="Ratio"/>.
/// None where no look before is on record.</param>
public readonly record struct PaceReport(double Ratio, double? NotYet = null);
