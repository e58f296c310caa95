using StudioBot.Chat.Pings;
using StudioBot.Chat.Tests.Support;

namespace StudioBot.Chat.Tests.Sharing;

public sealed class OrderedCommandTests : IDisposable
{
    private readonly LiveStudio _studio = LiveStudio.Empty();

    public OrderedCommandTests()
    {
        _studio.File.Write(session =>
            session.Members.AddAccount(501, session.Members.All().Single(one => one.Name == "Mira").Id, _studio.Now));
        _studio.Say("me mute week");
        _studio.Tells("material new saffron 250 ml 6.90");
        _studio.Tells("material saffron low 300 ml");
        _studio.Tells("bought 4 x 250 ml saffron 27.60");
    }

    public void Dispose() => _studio.Dispose();

    [Fact]
    public void What_is_on_its_way_is_not_told_as_low()
    {
        _studio.Tells("used 800 ml saffron");

        // Seven days, and as long again (common practice): from 25 November to 9 December.
        Assert.Equal(
            "On its way: saffron.\nSaffron is not told as low until it is booked as bought, or 9 Dec has come.",
            _studio.Tells("ordered saffron"));

        Assert.Empty(Later(TimeSpan.FromHours(1)));
        Look();
        Assert.Empty(Later(TimeSpan.FromDays(3)));
    }

    [Fact]
    public void It_is_listed_as_ordered_until_it_comes()
    {
        _studio.Tells("used 800 ml saffron");
        Assert.Contains(_studio.Say("buy").Reply.Buttons, button => button.Line == "ordered saffron");
        _studio.Tells("ordered saffron");

        var said = _studio.Say("buy").Reply;
        Assert.StartsWith("Nothing to buy: all is ordered\nOrdered:\nsaffron", Shelves.Words(said), StringComparison.Ordinal);
        Assert.DoesNotContain(said.Buttons, button => button.Line == "ordered saffron");
        Assert.StartsWith("Saffron: ordered", _studio.Hear("buy saffron"), StringComparison.Ordinal);
        Assert.Contains("Ordered today.", _studio.Hear("buy saffron"), StringComparison.Ordinal);

        _studio.Now += TimeSpan.FromDays(1);
        _studio.Tells("bought 2 x 250 ml saffron 13.80");
        Assert.DoesNotContain("rdered", _studio.Hear("buy saffron"), StringComparison.Ordinal);
        _studio.Say("undo");
        Assert.Contains("Ordered 25 Nov.", _studio.Hear("buy saffron"), StringComparison.Ordinal);
    }

    [Fact]
    public void Taken_back_it_is_to_be_bought_again()
    {
        _studio.Tells("used 800 ml saffron");
        _studio.Tells("ordered saffron");
        Assert.True(_studio.Say("undo").Recorded);

        Assert.StartsWith("To buy: saffron", _studio.Hear("buy"), StringComparison.Ordinal);
        Look();
        Assert.Single(Later(TimeSpan.FromMinutes(15)));
    }

    [Fact]
    public void Long_overdue_it_is_told_again()
    {
        _studio.Tells("material saffron delivery 5 days");
        _studio.Tells("used 800 ml saffron");
        Assert.Single(Later(TimeSpan.FromMinutes(15)));
        _studio.Tells("ordered saffron");
        _studio.Now += TimeSpan.FromDays(9);
        Look();
        Assert.Empty(Later(TimeSpan.FromMinutes(15)));

        _studio.Now += TimeSpan.FromDays(1);
        Look();

        var ping = Assert.Single(Later(TimeSpan.FromMinutes(15)));
        Assert.Contains("ordered but overdue", ping.Reply.PlainText, StringComparison.Ordinal);
        Look();
        Assert.Empty(Later(TimeSpan.FromHours(1)));
    }

    [Fact]
    public void The_ping_brings_its_button()
    {
        _studio.Tells("used 800 ml saffron");

        var ping = Assert.Single(Later(TimeSpan.FromMinutes(15)));

        Assert.Equal(["buy", "ordered saffron"], ping.Reply.Buttons.Select(button => button.Line));
    }

    [Fact]
    public void What_is_mixed_here_is_not_ordered() =>
        Assert.StartsWith("Medium is mixed here. Nothing recorded.", _studio.Refuses("ordered medium").PlainText, StringComparison.Ordinal);

    [Fact]
    public void It_is_nothing_that_the_studio_has_set()
    {
        _studio.Tells("ordered saffron");

        Assert.DoesNotContain("ordered", _studio.Hear("studio"), StringComparison.Ordinal);
    }

    private void Look() => _studio.File.Write(session =>
        StockWatch.Look(session, new Studio(session, Sample.Practice, isSample: false), _studio.Now));

    private IReadOnlyList<SpokenPing> Later(TimeSpan by)
    {
        _studio.Now += by;
        return _studio.Ring();
    }
}
