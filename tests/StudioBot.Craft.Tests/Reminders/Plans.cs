using System.Globalization;
using StudioBot.Craft.Reminders;

namespace StudioBot.Craft.Tests.Reminders;

/// <summary>Days of May 2026 in a zone without summer time, quiet from 22:00 to 8:00.</summary>
internal static class Plans
{
    public const long Chat = 4;

    public static readonly StudioZone Plain = new(TimeZoneInfo.Utc);

    public static readonly QuietHours Night = new(new TimeOnly(22, 0), new TimeOnly(8, 0), Plain);

    public static readonly PingWishes Wishes = new(Night);

    public static readonly PingSubject Piece = new(PingSubjectKind.Piece, 17);

    public static readonly PingSubject Studio = new(PingSubjectKind.Studio, 1);

    /// <summary><c>5 18:00</c>: the fifth of May, 18:00.</summary>
    public static DateTimeOffset At(string dayAndTime) => DateTimeOffset.ParseExact(
        "2026-05-" + dayAndTime, "yyyy-MM-d HH:mm", CultureInfo.InvariantCulture, DateTimeStyles.AssumeUniversal);

    public static StudioZone Zone(string name) => new(TimeZoneInfo.FindSystemTimeZoneById(name));

    public static DateTimeOffset Utc(string instant) =>
        DateTimeOffset.Parse(instant, CultureInfo.InvariantCulture, DateTimeStyles.AssumeUniversal);

    public static PlannedPing Planned(PingKind kind, DateTimeOffset at) =>
        new(OccurrenceKey.Nth(kind, Piece, 1), Chat, at);
}
