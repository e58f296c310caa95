using System.Globalization;
using StudioBot.Craft.Reminders;

namespace StudioBot.Craft.Tests.Reminders;

/// <summary>When clocks changed where: the IANA time zone database.</summary>
public sealed class StudioZoneTests
{
    [Theory]
    [InlineData("Europe/Berlin", "2026-01-15 09:00", "2026-01-15T08:00Z")]
    [InlineData("Europe/Berlin", "2026-07-15 09:00", "2026-07-15T07:00Z")]
    [InlineData("Asia/Kathmandu", "2026-07-15 09:00", "2026-07-15T03:15Z")]
    [InlineData("Pacific/Kiritimati", "2026-07-15 09:00", "2026-07-14T19:00Z")]
    [InlineData("Pacific/Pago_Pago", "2026-07-15 09:00", "2026-07-15T20:00Z")]
    // Skipped: the first instant after.
    [InlineData("Europe/Berlin", "2026-03-29 02:30", "2026-03-29T01:00Z")]
    [InlineData("Europe/Berlin", "2026-03-29 02:00", "2026-03-29T01:00Z")]
    [InlineData("Europe/Berlin", "2026-03-29 03:00", "2026-03-29T01:00Z")]
    [InlineData("America/New_York", "2026-03-08 02:30", "2026-03-08T07:00Z")]
    [InlineData("Australia/Lord_Howe", "2026-10-04 02:15", "2026-10-03T15:30Z")]
    [InlineData("Pacific/Apia", "2011-12-30 09:00", "2011-12-30T10:00Z")]
    // Repeated: the first pass.
    [InlineData("Europe/Berlin", "2026-10-25 02:30", "2026-10-25T00:30Z")]
    [InlineData("Europe/Berlin", "2026-10-25 02:00", "2026-10-25T00:00Z")]
    [InlineData("Europe/Berlin", "2026-10-25 03:00", "2026-10-25T02:00Z")]
    [InlineData("America/New_York", "2026-11-01 01:30", "2026-11-01T05:30Z")]
    [InlineData("Australia/Lord_Howe", "2026-04-05 01:45", "2026-04-04T14:45Z")]
    public void Wall_time_has_one_instant(string zone, string wall, string instant)
    {
        var local = DateTime.ParseExact(wall, "yyyy-MM-dd HH:mm", CultureInfo.InvariantCulture);

        Assert.Equal(
            Plans.Utc(instant),
            Plans.Zone(zone).InstantOf(DateOnly.FromDateTime(local), TimeOnly.FromDateTime(local)));
    }

    [Fact]
    public void An_instant_is_read_off_the_wall()
    {
        var berlin = Plans.Zone("Europe/Berlin");

        Assert.Equal(new DateTime(2026, 3, 29, 1, 59, 0), berlin.LocalOf(Plans.Utc("2026-03-29T00:59Z")));
        Assert.Equal(new DateTime(2026, 3, 29, 3, 0, 0), berlin.LocalOf(Plans.Utc("2026-03-29T01:00Z")));
        Assert.Equal(new DateOnly(2026, 3, 30), berlin.DateOf(Plans.Utc("2026-03-29T22:30Z")));
        Assert.Equal("Europe/Berlin", berlin.Name);
    }

    [Fact]
    public void A_day_that_was_skipped_whole_never_came()
    {
        Assert.False(Plans.Zone("Pacific/Apia").Has(new DateOnly(2011, 12, 30)));
        Assert.True(Plans.Zone("Pacific/Apia").Has(new DateOnly(2011, 12, 31)));
        Assert.True(Plans.Zone("America/Havana").Has(new DateOnly(2026, 3, 8)));   // its midnight was skipped
    }

    [Theory]
    [InlineData("2026-05-06T06:59Z", "2026-05-06")]
    [InlineData("2026-05-06T07:00Z", "2026-05-07")]   // the slot itself is not after itself
    [InlineData("2026-05-06T22:30Z", "2026-05-07")]
    public void The_next_slot_lies_after_the_instant(string after, string date) => Assert.Equal(
        DateOnly.Parse(date, CultureInfo.InvariantCulture),
        Plans.Zone("Europe/Berlin").Next(new CivilRule(new TimeOnly(9, 0)), Plans.Utc(after)).Date);

    [Fact]
    public void The_next_sunday_is_found_from_any_day()
    {
        var rule = new CivilRule(new TimeOnly(9, 0), DayOfWeek.Sunday);

        for (var hour = 0; hour < 168; hour++)
        {
            // 3 and 10 May 2026 are Sundays.
            Assert.Equal(new DateOnly(2026, 5, 10), Plans.Plain.Next(rule, Plans.At("3 09:00").AddHours(hour)).Date);
        }
    }

    [Fact]
    public void A_late_hour_that_midnight_swallowed_still_comes()
    {
        // Nuuk skips 23:00 to 24:00 on Saturday 28 March 2026, at 01:00 UTC.
        var nuuk = Plans.Zone("America/Nuuk");
        var slot = nuuk.Next(new CivilRule(new TimeOnly(23, 30)), Plans.Utc("2026-03-29T00:59Z"));

        Assert.Equal(new DateOnly(2026, 3, 28), slot.Date);
        Assert.Equal(Plans.Utc("2026-03-29T01:00Z"), slot.At);
    }
}
