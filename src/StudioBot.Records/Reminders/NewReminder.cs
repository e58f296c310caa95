namespace StudioBot.Records.Reminders;

/// <summary>Something to be said later.</summary>
/// <param name="Kind">Which ping, 1 to 30 characters.</param>
/// <param name="Subject">What it is about, 1 to 60 characters: piece 17.</param>
/// <param name="PlannedAt">When.</param>
/// <param name="OccurrenceKey">What makes it this one and no other, 1 to 120 characters: never planned twice.</param>
public sealed record NewReminder(string Kind, string Subject, DateTimeOffset PlannedAt, string OccurrenceKey)
{
    /// <summary>In which chat; none where the member's own is meant.</summary>
    public long? ChatId { get; init; }

    /// <summary>To whom; none where a whole chat is meant.</summary>
    public long? MemberId { get; init; }

    /// <summary>Where the moment follows the wall clock: its rule; a duration has none.</summary>
    public CivilRule? Civil { get; init; }
}
