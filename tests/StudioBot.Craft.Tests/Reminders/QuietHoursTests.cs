using StudioBot.Craft.Reminders;

namespace StudioBot.Craft.Tests.Reminders;

public sealed class QuietHoursTests
{
    [Theory]
    [InlineData("5 21:59", false)]
    [InlineData("5 22:00", true)]
    [InlineData("6 00:00", true)]
    [InlineData("6 07:59", true)]
    [InlineData("6 08:00", false)]
    [InlineData("6 12:00", false)]
    public void The_night_runs_over_midnight(string at, bool quiet) =>
        Assert.Equal(quiet, Plans.Night.IsQuiet(Plans.At(at)));

    [Theory]
    [InlineData("5 12:59", false)]
    [InlineData("5 13:00", true)]
    [InlineData("5 14:59", true)]
    [InlineData("5 15:00", false)]
    public void Quiet_may_be_by_day(string at, bool quiet) => Assert.Equal(
        quiet, new QuietHours(new TimeOnly(13, 0), new TimeOnly(15, 0), Plans.Plain).IsQuiet(Plans.At(at)));

    [Theory]
    [InlineData("5 21:59", "5 21:59")]
    [InlineData("5 22:00", "6 08:00")]
    [InlineData("6 03:00", "6 08:00")]
    [InlineData("6 08:00", "6 08:00")]
    public void Everybody_is_awake_from_then(string at, string awake) =>
        Assert.Equal(Plans.At(awake), Plans.Night.AwakeFrom(Plans.At(at)));

    [Fact]
    public void From_a_time_to_the_same_time_is_never_quiet()
    {
        var never = new QuietHours(new TimeOnly(22, 0), new TimeOnly(22, 0), Plans.Plain);

        Assert.All(
            Enumerable.Range(0, 48),
            half => Assert.False(never.IsQuiet(Plans.At("5 22:00").AddMinutes(30 * half))));
    }

    [Theory]
    [InlineData("2026-03-28T21:00Z", "2026-03-29T06:00Z", 9)]    // the night that skips an hour
    [InlineData("2026-10-24T20:00Z", "2026-10-25T07:00Z", 11)]   // the night that repeats one
    public void The_wall_ends_the_night_whatever_its_length(string from, string until, int hours)
    {
        // Berlin's changes of 2026: IANA time zone database.
        var night = (Plans.Night with { Zone = Plans.Zone("Europe/Berlin") }).StretchAt(Plans.Utc(from).AddHours(4));

        Assert.Equal(new QuietStretch(Plans.Utc(from), Plans.Utc(until)), night);
        Assert.Equal(TimeSpan.FromHours(hours), night!.Until - night.From);
    }
}
