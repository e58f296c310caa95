using StudioBot.Craft.Units;

namespace StudioBot.Craft.Practice;

/// <summary>A printed pot life with its sample: a fuller cup has less, by no simple law.</summary>
/// <param name="Time">From mixing until the cup is no longer usable.</param>
/// <param name="Sample">The mass mixed for it.</param>
/// <param name="At">The temperature it was found at.</param>
public sealed record SheetPotLife(TimeSpan Time, Mass Sample, Temperature At);
