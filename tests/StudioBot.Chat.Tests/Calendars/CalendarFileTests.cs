using System.Text;
using CsCheck;
using Ical.Net;
using Ical.Net.CalendarComponents;
using StudioBot.Chat.Calendars;
using Xunit.Abstractions;

namespace StudioBot.Chat.Tests.Calendars;

/// <summary>The file is read back by an independent library (Ical.Net) and held to RFC 5545.</summary>
public sealed class CalendarFileTests(ITestOutputHelper output)
{
    private static readonly DateTimeOffset Now = new(2026, 11, 25, 9, 0, 0, TimeSpan.Zero);
    private static readonly DateOnly Day = new(2026, 12, 2);

    private static readonly CalendarEntry Ready = new CalendarEntry.AllDay("piece-17-ready", "17 likely ready", "By hand first.", Day);

    // RFC 5545, 3.3.11 and 3.1: what is special in a text, what ends a line, and letters of one to four octets.
    private static readonly Gen<string> Titles = Gen.Frequency(
        (4, Gen.Char['a', 'z'].Select(letter => letter.ToString())),
        (2, One(",", ";", "\\", "\n", ":", "\"", " ", "\\n", "\\,")),
        (1, One("é", "漢", "🎨", "e\u0301", "\u202E", "שלום", "\u200D"))).Array[1, 300].Select(string.Concat);

    [Fact]
    public void Ten_thousand_random_titles_come_back_letter_for_letter() =>
        Titles.Array[50].Sample(
            titles =>
            {
                var bytes = CalendarFile.Of(
                    titles.Select((title, at) => Ready with { Id = $"piece-{at}-ready", Title = title, Words = title }), "s", Now);
                var read = Read(bytes);
                return read.Count == titles.Length
                    && titles.All(title => read.Any(one => one.Summary == title && one.Description == title))
                    && Lines(bytes).All(line => Encoding.UTF8.GetByteCount(line) <= 75);
            },
            output.WriteLine,
            iter: 200);

    [Fact]
    public void Every_line_ends_as_the_standard_says()
    {
        var text = Encoding.UTF8.GetString(CalendarFile.Of([Ready], "s", Now));
        Assert.EndsWith("END:VCALENDAR\r\n", text);
        Assert.Equal(text.Count(sign => sign == '\n'), text.Split("\r\n").Length - 1);
    }

    // RFC 5545, 3.1, folds between any two characters; the blank that begins the next line is taken off again.
    [Fact]
    public void No_character_is_cut_in_two()
    {
        var file = CalendarFile.Of([Ready with { Title = new string('漢', 200) }], "s", Now);
        Assert.DoesNotContain('\uFFFD', Encoding.UTF8.GetString(file));
        Assert.All(Lines(file), line => Assert.DoesNotContain('\uFFFD', line));
        Assert.Equal(new string('漢', 200), Read(file).Single().Summary);
    }

    [Fact]
    public void A_day_is_a_day_wherever_it_is_read()
    {
        var read = Read(CalendarFile.Of([Ready], "s", Now)).Single();
        Assert.True(read.IsAllDay);
        Assert.Equal(Day, read.DtStart!.Date);
        Assert.Equal(Day.AddDays(1), read.DtEnd!.Date); // RFC 5545, 3.6.1: the end does not belong to it
    }

    [Fact]
    public void A_moment_is_the_same_moment_on_both_sides_of_a_clock_change()
    {
        // In Vienna the clocks go back on 25 October 2026 at 01:00 UTC.
        var (from, until) = (new DateTimeOffset(2026, 10, 25, 0, 30, 0, TimeSpan.Zero), new DateTimeOffset(2026, 10, 25, 1, 30, 0, TimeSpan.Zero));
        var read = Read(CalendarFile.Of([new CalendarEntry.Between("w", "t", "", from, until)], "s", Now)).Single();
        Assert.Equal((from.UtcDateTime, until.UtcDateTime), (read.DtStart!.AsUtc, read.DtEnd!.AsUtc));
    }

    [Fact]
    public void A_later_file_is_the_newer_one_of_the_same_thing()
    {
        var early = Read(CalendarFile.Of([Ready], "s", Now)).Single();
        var late = Read(CalendarFile.Of([Ready with { IsCancelled = true }], "s", Now.AddMinutes(1))).Single();
        Assert.Equal("piece-17-ready@s", early.Uid);
        Assert.Equal(early.Uid, late.Uid);
        Assert.True(late.Sequence > early.Sequence);
        Assert.Equal(("CONFIRMED", "CANCELLED"), (early.Status, late.Status));
    }

    private static Gen<string> One(params string[] of) => Gen.Int[0, of.Length - 1].Select(at => of[at]);

    private static List<CalendarEvent> Read(byte[] file) => [.. Calendar.Load(Encoding.UTF8.GetString(file))!.Events];

    private static string[] Lines(byte[] file) => Encoding.UTF8.GetString(file).Split("\r\n");
}
