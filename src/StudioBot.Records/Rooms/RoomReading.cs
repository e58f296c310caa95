using StudioBot.Craft.Units;

namespace StudioBot.Records.Rooms;

/// <summary>The air of a room as somebody read it.</summary>
/// <param name="Room">The room's name.</param>
/// <param name="Temperature">How warm it was.</param>
/// <param name="Humidity">How humid it was.</param>
/// <param name="At">When it was read, UTC.</param>
public sealed record RoomReading(string Room, Temperature Temperature, RelativeHumidity Humidity, DateTimeOffset At);
