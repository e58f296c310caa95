using StudioBot.Craft.Units;

namespace StudioBot.Craft.Coats;

/// <summary>So much of one part of a resin, by volume and by mass.</summary>
public readonly record struct ResinPart(Volume Volume, Mass Mass);
