using StudioBot.Craft.Units;

namespace StudioBot.Craft.Drying;

/// <summary>A piece's mass at a moment.</summary>
/// <param name="Elapsed">Drying time since the pour by the room's clock, in equivalent hours (23 °C, 50 %).</param>
/// <param name="Mass">What the scale showed, panel and all.</param>
public readonly record struct Weighing(TimeSpan Elapsed, Mass Mass);
