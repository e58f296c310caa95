using StudioBot.Chat.Pings;
using StudioBot.Chat.Replies;
using StudioBot.Chat.Tests.Support;

namespace StudioBot.Chat.Tests.Pings;

public sealed class StockLowPingTests : IDisposable
{
    private readonly LiveStudio _studio = LiveStudio.Empty();

    // Ten past two in the afternoon of the studio's zone.
    public StockLowPingTests()
    {
        _studio.Now = new DateTimeOffset(2026, 11, 26, 13, 10, 0, TimeSpan.Zero);
        _studio.File.Write(session => session.Members.AddAccount(501, session.Members.All().Single(one => one.Name == "Mira").Id, _studio.Now));
    }

    public void Dispose() => _studio.Dispose();

    [Fact]
    public void What_falls_within_a_quarter_of_an_hour_is_one_message()
    {
        Shelf("saffron");
        Shelf("teal");
        _studio.Tells("used 800 ml saffron", "Pia");
        _studio.Now += TimeSpan.FromMinutes(2);
        _studio.Tells("used 780 ml teal", "Pia");
        Assert.Empty(_studio.Ring());

        var ping = Assert.Single(Later(TimeSpan.FromMinutes(3)));

        Assert.StartsWith("Low on the shelf: saffron 200 ml and teal 220 ml.", ping.Reply.PlainText, StringComparison.Ordinal);
        Assert.Equal("buy", ping.Reply.Buttons[0].Line);
        Assert.True(LineBudget.Of(ping.Reply) <= LineBudget.Lines, ping.Reply.PlainText);
        Assert.Equal(501, ping.Chat);
    }

    [Fact]
    public void It_says_how_long_it_lasts_and_what_to_buy()
    {
        Shelf("saffron");
        _studio.Tells("used 800 ml saffron", "Pia");

        // Worked by hand: 800 ml in two weeks at least are 57.14 a day; 200 ml are 3.5 days. Few uses: m = 457.1,
        // s = 1.5 x 57.14 x √8 = 242.4, c = 0.530, 913.4 ml; and 28 days more are 2513.4, so 2313.4 ml: ten of 250.
        // z²σ² = 1.6424 x 85.71² = 12 065; a = 3265 - 862 = 2403, b = 34 921, the root of b² - 160 000 a is 28 896:
        // from 80 000 / 63 817 = 1.25 to 63 817 / 4806 = 13.3 days.
        Assert.Contains(
            "Saffron lasts about 3 days (1 to 13), by few uses: buy 10 x 250 ml, 69.00.",
            Assert.Single(Later(TimeSpan.FromMinutes(5))).Reply.PlainText,
            StringComparison.Ordinal);
    }

    [Fact]
    public void It_is_said_once_and_again_only_after_it_was_well_above()
    {
        Shelf("saffron");
        _studio.Tells("used 800 ml saffron", "Pia");
        Assert.Single(Later(TimeSpan.FromMinutes(5)));

        _studio.Now += TimeSpan.FromMinutes(5);

        // The mark is 913 ml, and 1.25 times it 1142: 1100 ml are above it, but not well.
        _studio.Tells("bought 900 ml saffron 24.00");
        _studio.Tells("used 600 ml saffron", "Pia");
        Assert.Empty(Later(TimeSpan.FromHours(1)));

        _studio.Tells("bought 700 ml saffron 20.00");
        _studio.Tells("used 1000 ml saffron", "Pia");
        Assert.Single(Later(TimeSpan.FromHours(1)));
    }

    [Fact]
    public void What_is_taken_back_is_not_said()
    {
        Shelf("saffron");
        _studio.Tells("used 800 ml saffron", "Pia");
        _studio.Say("undo", "Pia");

        Assert.Empty(Later(TimeSpan.FromHours(1)));
    }

    [Fact]
    public void Who_switched_it_off_is_planned_nothing()
    {
        _studio.Say("me mute low");
        Shelf("saffron");
        _studio.Tells("used 800 ml saffron", "Pia");
        Look();
        Assert.Equal(0, _studio.Look(view => view.Reminders.Waiting()));

        _studio.Say("me unmute low");
        Look();

        Assert.Single(Later(TimeSpan.FromMinutes(15)));
    }

    [Fact]
    public void The_watch_plans_a_level_but_once()
    {
        Shelf("saffron");
        _studio.Tells("used 800 ml saffron", "Pia");
        Look();
        Look();

        Assert.Equal(1, _studio.Look(view => view.Reminders.Waiting()));
    }

    private void Shelf(string name)
    {
        _studio.Tells($"material new {name} 250 ml 6.90");
        _studio.Tells($"bought 4 x 250 ml {name} 27.60");
    }

    private void Look() => _studio.File.Write(session =>
        StockWatch.Look(session, new Studio(session, Sample.Practice, isSample: false), _studio.Now));

    private IReadOnlyList<SpokenPing> Later(TimeSpan by)
    {
        _studio.Now += by;
        return _studio.Ring();
    }
}
