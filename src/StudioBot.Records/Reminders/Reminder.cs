namespace StudioBot.Records.Reminders;

/// <summary>Something to be said, or that was.</summary>
/// <param name="Id">The studio's own number for it.</param>
/// <param name="What">As it was planned; its moment is the one it has now.</param>
/// <param name="State">How far it is.</param>
/// <param name="DueAt">When to look at it, UTC: the planned moment, or until when it is held.</param>
/// <param name="Verdict">What was decided last; none while nothing was.</param>
/// <param name="DoneAt">When it was done, UTC.</param>
/// <param name="ActId">The act that planned it; none: the studio itself.</param>
public sealed record Reminder(
    long Id,
    NewReminder What,
    ReminderState State,
    DateTimeOffset DueAt,
    string? Verdict,
    DateTimeOffset? DoneAt,
    long? ActId);
