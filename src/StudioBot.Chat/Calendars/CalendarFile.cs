using System.Globalization;
using System.Text;

namespace StudioBot.Chat.Calendars;

/// <summary>A calendar as iCalendar (RFC 5545). Moments stand in UTC and days without a zone, so that no rules of a
/// zone need to go with them.</summary>
internal static class CalendarFile
{
    /// <summary>What it is: text/calendar.</summary>
    public const string MediaType = "text/calendar";

    private const string Moment = "yyyyMMdd'T'HHmmss'Z'";
    private const string Day = "yyyyMMdd";
    private const string End = "\r\n";

    // RFC 5545, 3.1: a line should be no longer than that, its end left out.
    private const int MostOctets = 75;

    // Whoever imports a later file takes what has a higher number for the newer: minutes since then.
    private static readonly DateTimeOffset FirstMinute = new(2020, 1, 1, 0, 0, 0, TimeSpan.Zero);

    /// <summary>The bytes of the file.</summary>
    /// <param name="entries">What is in it; each <see cref="CalendarEntry.Id"/> once.</param>
    /// <param name="studio">What tells this studio's entries from another's in one calendar: letters, figures and
    /// dashes.</param>
    /// <param name="now">When it is made; not before 2020.</param>
    public static byte[] Of(IEnumerable<CalendarEntry> entries, string studio, DateTimeOffset now)
    {
        var file = new StringBuilder();
        Write(file, "BEGIN:VCALENDAR");
        Write(file, "VERSION:2.0");
        Write(file, "PRODID:-//StudioBot//Calendar//EN");
        Write(file, "METHOD:PUBLISH");
        foreach (var entry in entries)
        {
            Write(file, "BEGIN:VEVENT");
            Write(file, $"UID:{entry.Id}@{studio}");
            Write(file, "DTSTAMP:" + Utc(now));
            Write(file, "SEQUENCE:" + Minutes(now));
            foreach (var line in Times(entry))
            {
                Write(file, line);
            }

            Write(file, "SUMMARY:" + Text(entry.Title));
            Write(file, "DESCRIPTION:" + Text(entry.Words));
            Write(file, entry.IsCancelled ? "STATUS:CANCELLED" : "STATUS:CONFIRMED");
            Write(file, "TRANSP:TRANSPARENT");
            Write(file, "END:VEVENT");
        }

        Write(file, "END:VCALENDAR");
        return Encoding.UTF8.GetBytes(file.ToString());
    }

    // The end of a day is the next one, which does not belong to it (RFC 5545, 3.6.1).
    private static IEnumerable<string> Times(CalendarEntry entry) => entry switch
    {
        CalendarEntry.AllDay day =>
        [
            "DTSTART;VALUE=DATE:" + Date(day.Day),
            "DTEND;VALUE=DATE:" + Date(day.Day.AddDays(1)),
        ],
        CalendarEntry.Between span => ["DTSTART:" + Utc(span.From), "DTEND:" + Utc(span.Until)],
        _ => throw new InvalidOperationException($"An entry without a time: {entry}."),
    };

    private static string Utc(DateTimeOffset moment) =>
        moment.UtcDateTime.ToString(Moment, CultureInfo.InvariantCulture);

    private static string Minutes(DateTimeOffset now) =>
        ((int)(now - FirstMinute).TotalMinutes).ToString(CultureInfo.InvariantCulture);

    private static string Date(DateOnly day) => day.ToString(Day, CultureInfo.InvariantCulture);

    // RFC 5545, 3.3.11: no sign but the end of a line is a control character, and that is written as \n.
    private static string Text(string words)
    {
        var text = new StringBuilder();
        foreach (var rune in words.ReplaceLineEndings("\n").EnumerateRunes())
        {
            text.Append(rune.Value switch
            {
                '\n' => @"\n",
                '\\' => @"\\",
                ';' => @"\;",
                ',' => @"\,",
                '\t' => "\t",
                _ when Rune.IsControl(rune) => "",
                _ => rune.ToString(),
            });
        }

        return text.ToString();
    }

    // A line that goes on begins with a blank, which counts; no character is cut in two.
    private static void Write(StringBuilder file, string line)
    {
        var octets = 0;
        foreach (var rune in line.EnumerateRunes())
        {
            if (octets + rune.Utf8SequenceLength > MostOctets)
            {
                file.Append(End).Append(' ');
                octets = 1;
            }

            file.Append(rune.ToString());
            octets += rune.Utf8SequenceLength;
        }

        file.Append(End);
    }
}
