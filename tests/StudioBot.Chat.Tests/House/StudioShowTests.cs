using StudioBot.Chat.Tests.Asking;
using StudioBot.Chat.Tests.Support;
using StudioBot.Records.Reminders;

namespace StudioBot.Chat.Tests.House;

public sealed class StudioShowTests
{
    private readonly StockedStudio _studio = new();

    [Fact]
    public void It_shows_what_is_set()
    {
        var said = Phone.Says("studio");

        Assert.StartsWith("Lantern Yard Pour Room", said, StringComparison.Ordinal);
        Assert.Contains("Clock of Europe/Vienna.", said, StringComparison.Ordinal);
        Assert.Matches("Currency +EUR", said);
        Assert.Matches("Units +metric", said);
        Assert.Matches("Scoop +20 ml", said);
        Assert.Matches("Quiet +22:00 to 8:00", said);
        Assert.Contains("Quiet hours as usual, none are set.", said, StringComparison.Ordinal);
    }

    [Fact]
    public void What_else_is_set_stands_there_too()
    {
        _studio.Write(session =>
        {
            session.Studio.Set("quiet", "21:30-07:00", _studio.Said(session, "studio", 20));
            session.Studio.Set("week_day", "sunday", _studio.Said(session, "studio", 20));
        });

        var said = _studio.Says("studio");

        Assert.Matches("Quiet +21:30 to 7:00", said);
        Assert.Matches("Week day +sunday", said);
        Assert.DoesNotContain("as usual", said, StringComparison.Ordinal);
    }

    [Fact]
    public void Health_counts_what_waits_and_shows_each_room_as_last_read()
    {
        var said = Phone.Says("health");        // the invented studio at ten: read 8:40 today and 17:30 yesterday

        Assert.StartsWith("12 pieces and 0 reminders waiting", said, StringComparison.Ordinal);
        Assert.Matches(@"drying +5\s", said);
        Assert.Matches(@"dry, not coated +3\s", said);
        Assert.Matches(@"coated, curing +4\s", said);
        Assert.Matches("studio +20 °C 55 %, 80 min", said);
        Assert.Matches(@"cupboard +23 °C 45 %, 16\.5 h", said);
        Assert.Contains("No reminder waits.", said, StringComparison.Ordinal);
    }

    [Fact]
    public void The_next_reminder_is_told()
    {
        _studio.Write(session =>
        {
            session.Reminders.Plan(new NewReminder("ready", "piece 1", StockedStudio.On(28), "one"));
            session.Reminders.Plan(new NewReminder("ready", "piece 2", StockedStudio.On(27), "two"));
            session.Rooms.Add("cellar");
        });

        var said = _studio.Says("health");

        Assert.StartsWith("0 pieces and 2 reminders waiting", said, StringComparison.Ordinal);
        Assert.Contains("The next reminder: 27 Nov 9:00.", said, StringComparison.Ordinal);
        Assert.Matches("cellar +never read", said);
    }

    [Fact]
    public void A_reminder_that_is_late_is_told_as_late()
    {
        _studio.Write(session => session.Reminders.Plan(new NewReminder("ready", "piece 1", StockedStudio.On(25), "one")));

        Assert.Contains("The next reminder is due since today 9:00.", _studio.Says("status"), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("studio")]
    [InlineData("health")]
    [InlineData("status")]
    [InlineData("studio health")]
    public void It_fits_a_phone(string words) => Phone.Fits(words);
}
