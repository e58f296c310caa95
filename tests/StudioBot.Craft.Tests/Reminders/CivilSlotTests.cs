using System.Globalization;
using StudioBot.Craft.Reminders;

namespace StudioBot.Craft.Tests.Reminders;

/// <summary>
/// Zones and their changes: the IANA time zone database. Each rule's hour is one its zone skips or repeats.
/// </summary>
public sealed class CivilSlotTests
{
    private static readonly DateOnly First = new(2007, 1, 1);
    private static readonly DateOnly Last = new(2026, 12, 31);

    [Theory]
    [InlineData("Europe/Berlin", "02:30")]
    [InlineData("Europe/Dublin", "01:30")]            // winter is its summer time, set back
    [InlineData("America/New_York", "02:30")]
    [InlineData("America/Los_Angeles", "02:00")]
    [InlineData("America/St_Johns", "00:15")]         // a minute past midnight until 2011
    [InlineData("America/Santiago", "00:00")]
    [InlineData("America/Havana", "00:30")]
    [InlineData("America/Asuncion", "00:30")]
    [InlineData("America/Nuuk", "23:30")]             // skips up to midnight
    [InlineData("Antarctica/Troll", "01:30")]         // two hours
    [InlineData("Africa/Cairo", "00:30")]
    [InlineData("Africa/Casablanca", "02:30")]        // four changes a year
    [InlineData("Asia/Beirut", "00:00")]
    [InlineData("Asia/Tehran", "00:00")]
    [InlineData("Asia/Gaza", "00:30")]
    [InlineData("Australia/Lord_Howe", "02:15")]      // half an hour
    [InlineData("Australia/Sydney", "02:30")]
    [InlineData("Pacific/Auckland", "02:30")]
    [InlineData("Pacific/Apia", "03:30")]             // without 30 December 2011
    public void A_daily_rule_comes_once_each_local_date_for_twenty_years(string name, string time)
    {
        var zone = Plans.Zone(name);
        var rule = new CivilRule(TimeOnly.Parse(time, CultureInfo.InvariantCulture));
        var slot = new CivilSlot(zone, rule, First);
        var (before, odd) = (slot.At.AddHours(-1), 0);
        for (var date = First; date <= Last; date = date.AddDays(1))
        {
            if (name == "Pacific/Apia" && date == new DateOnly(2011, 12, 30))
            {
                continue;
            }

            var (wall, at) = (date.ToDateTime(rule.At), slot.At);
            Assert.Equal(date, slot.Date);
            Assert.True(at > before, $"{wall} comes after the day before");
            Assert.True(IsFirstPass(zone, at, wall) || IsFirstAfterGap(zone, at, wall), $"{wall} in {name}: {at}");
            odd += zone.LocalOf(at) != wall || Passes(zone, at, wall) > 1 ? 1 : 0;
            (before, slot) = (at, slot.Next);
        }

        Assert.True(odd > 0, "The rule never met a change of clocks.");
    }

    [Fact]
    public void Missed_weeks_become_the_last_one()
    {
        var rule = new CivilRule(new TimeOnly(9, 0), DayOfWeek.Sunday);
        var slot = new CivilSlot(Plans.Plain, rule, new DateOnly(2026, 5, 3));

        Assert.Equal(slot, slot.LatestBy(Plans.At("1 09:00")));     // a clock set back changes nothing
        Assert.Equal(slot, slot.LatestBy(Plans.At("10 08:59")));
        Assert.Equal(new DateOnly(2026, 5, 10), slot.LatestBy(Plans.At("10 09:00")).Date);
        Assert.Equal(new DateOnly(2026, 5, 31), slot.LatestBy(Plans.At("31 23:00")).Date);
        Assert.Equal(new DateOnly(2027, 6, 6), slot.LatestBy(Plans.At("3 09:00").AddDays(400)).Date);
    }

    [Fact]
    public void A_weekly_rule_keeps_its_day()
    {
        var rule = new CivilRule(new TimeOnly(9, 0), DayOfWeek.Sunday);
        var slot = new CivilSlot(Plans.Zone("Europe/Berlin"), rule, new DateOnly(2026, 3, 22));

        Assert.Equal(Plans.Utc("2026-03-22T08:00Z"), slot.At);
        Assert.Equal(Plans.Utc("2026-03-29T07:00Z"), slot.Next.At);
        Assert.Equal(Plans.Utc("2026-04-05T07:00Z"), slot.Next.Next.At);
    }

    private static bool IsFirstPass(StudioZone zone, DateTimeOffset at, DateTime wall) =>
        zone.LocalOf(at) == wall && !Shifts.Any(shift => zone.LocalOf(at - shift) == wall);

    private static bool IsFirstAfterGap(StudioZone zone, DateTimeOffset at, DateTime wall) =>
        zone.LocalOf(at) > wall && zone.LocalOf(at.AddTicks(-1)) < wall;

    private static int Passes(StudioZone zone, DateTimeOffset at, DateTime wall) =>
        1 + Shifts.Count(shift => zone.LocalOf(at + shift) == wall);

    private static IEnumerable<TimeSpan> Shifts =>
        [TimeSpan.FromMinutes(30), TimeSpan.FromHours(1), TimeSpan.FromHours(2)];
}
