namespace StudioBot.Craft.Drying;

/// <summary>Drying time between two moments.</summary>
/// <param name="Equivalent">What the same drying would take in the reference room of 23 °C and 50 %.</param>
/// <param name="Unread">How much of the wall time no reading of the last 24 hours spoke for; the mean stood in.</param>
public readonly record struct RoomTime(TimeSpan Equivalent, TimeSpan Unread);
