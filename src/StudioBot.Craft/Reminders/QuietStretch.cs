namespace StudioBot.Craft.Reminders;

/// <summary>One run of quiet hours.</summary>
/// <param name="From">Its first instant.</param>
/// <param name="Until">The first instant after it.</param>
public sealed record QuietStretch(DateTimeOffset From, DateTimeOffset Until)
{
    /// <summary>Whether an instant lies in it.</summary>
    public bool Holds(DateTimeOffset instant) => From <= instant && instant < Until;
}
