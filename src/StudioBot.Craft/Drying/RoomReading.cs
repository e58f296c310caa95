using StudioBot.Craft.Air;

namespace StudioBot.Craft.Drying;

/// <summary>A room's air as read at one moment.</summary>
public sealed record RoomReading(DateTimeOffset At, RoomAir Air);
