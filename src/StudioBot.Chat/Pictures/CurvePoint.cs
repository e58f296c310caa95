using StudioBot.Craft.Units;

namespace StudioBot.Chat.Pictures;

/// <summary>A point of the curve through a piece's weighings.</summary>
/// <param name="At">When, on the studio's wall clock.</param>
/// <param name="Mass">What the piece weighs then.</param>
/// <param name="Low">At least.</param>
/// <param name="High">At most.</param>
internal sealed record CurvePoint(DateTime At, Mass Mass, Mass Low, Mass High);
