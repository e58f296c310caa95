namespace StudioBot.Records.Reminders;

/// <summary>How far a reminder is.</summary>
public enum ReminderState
{
    /// <summary>It waits for its moment.</summary>
    Planned,

    /// <summary>Its moment came, and it waits for a better one.</summary>
    Held,

    /// <summary>It was said, or will not be.</summary>
    Done,
}
