using StudioBot.Craft.Surfaces;
using StudioBot.Craft.Units;

namespace StudioBot.Records.Pieces;

/// <summary>A number that was written under a piece before it is poured.</summary>
/// <param name="Number">The number; 1 or more.</param>
/// <param name="Surface">The shape and sizes of what it was written under.</param>
/// <param name="Depth">How deep its sides are; none where only the face is to be poured.</param>
public sealed record ReservedNumber(int Number, Surface Surface, Length? Depth);
