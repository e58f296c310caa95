namespace StudioBot.Craft.Reminders;

/// <summary>What is to be said, and when.</summary>
/// <param name="Kind">What is said.</param>
/// <param name="At">When.</param>
public sealed record PingMoment(PingKind Kind, DateTimeOffset At);
