using System.Globalization;

namespace StudioBot.Craft.Reminders;

/// <summary>Which ping this is, for ever: whatever happens, it is said at most once in a chat.</summary>
/// <param name="Kind">What is said.</param>
/// <param name="Subject">What it is about.</param>
/// <param name="Occurrence">Which time: a date for what follows a civil rule, else a count from 1.</param>
public sealed record OccurrenceKey(PingKind Kind, PingSubject Subject, string Occurrence)
{
    /// <summary>The n-th of its kind about its subject, counted from 1.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The count is not above zero.</exception>
    public static OccurrenceKey Nth(PingKind kind, PingSubject subject, int count) => count > 0
        ? new(kind, subject, count.ToString(CultureInfo.InvariantCulture))
        : throw new ArgumentOutOfRangeException(nameof(count), count, "Occurrences are counted from 1.");

    /// <summary>The one of a day.</summary>
    public static OccurrenceKey On(PingKind kind, PingSubject subject, DateOnly date) =>
        new(kind, subject, date.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture));

    /// <summary>The key as it is kept: <c>Ready/Piece/17/1</c>.</summary>
    public override string ToString() =>
        string.Create(CultureInfo.InvariantCulture, $"{Kind}/{Subject.Kind}/{Subject.Id}/{Occurrence}");
}
