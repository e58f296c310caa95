namespace StudioBot.Chat.Calendars;

/// <summary>One thing in a calendar: a whole day, or from a moment to another.</summary>
/// <param name="Id">What it is about, the same in every file: piece-17-ready.</param>
/// <param name="Title">In a few words.</param>
/// <param name="Words">What it rests on, and what to mind.</param>
internal abstract record CalendarEntry(string Id, string Title, string Words)
{
    /// <summary>It was to be, and is no more.</summary>
    public bool IsCancelled { get; init; }

    /// <summary>On that day, whatever the hour.</summary>
    public sealed record AllDay(string Id, string Title, string Words, DateOnly Day) : CalendarEntry(Id, Title, Words);

    /// <summary>Between two moments.</summary>
    /// <param name="Id">What it is about.</param>
    /// <param name="Title">In a few words.</param>
    /// <param name="Words">What to mind.</param>
    /// <param name="From">It begins.</param>
    /// <param name="Until">It ends; not before it begins.</param>
    public sealed record Between(string Id, string Title, string Words, DateTimeOffset From, DateTimeOffset Until)
        : CalendarEntry(Id, Title, Words);
}
