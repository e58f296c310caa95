using StudioBot.Chat.Pings;
using StudioBot.Chat.Replies;
using StudioBot.Chat.Tests.Support;

namespace StudioBot.Chat.Tests.Pings;

/// <summary>Bought on 25 November and kept for 30 days, a lot is old on 25 December; people are there at nine.</summary>
public sealed class OldPingTests : IDisposable
{
    private readonly LiveStudio _studio = LiveStudio.Empty();

    public OldPingTests()
    {
        _studio.File.Write(session =>
        {
            session.Members.AddAccount(501, session.Members.All().Single(one => one.Name == "Mira").Id, _studio.Now);
            session.Members.AddAccount(502, session.Members.All().Single(one => one.Name == "Pia").Id, _studio.Now);
        });
        _studio.Say("me mute week");
        _studio.Tells("material new saffron 250 ml 6.90");
        _studio.Tells("material saffron keeps 30 days");
    }

    public void Dispose() => _studio.Dispose();

    [Fact]
    public void It_is_said_a_week_before_and_when_it_is_so_and_once_each()
    {
        _studio.Tells("bought 250 ml saffron 6.90 lot W-7");

        var days = Days(40);

        Assert.Equal(
            ["19 Dec 501 Old soon: saffron W-7 on 25 Dec, 250 ml.", "26 Dec 501 Gone old: saffron W-7 since 25 Dec, 250 ml."],
            days);
    }

    [Fact]
    public void It_brings_the_lot_behind_a_button_and_fits_a_phone()
    {
        _studio.Tells("bought 250 ml saffron 6.90 lot W-7");
        _studio.Now += TimeSpan.FromDays(24);

        var ping = Assert.Single(_studio.Ring());

        Assert.Equal("lot W-7", Assert.Single(ping.Reply.Buttons).Line);
        Assert.True(LineBudget.Of(ping.Reply) <= LineBudget.Lines, ping.Reply.PlainText);
    }

    [Fact]
    public void Its_days_are_counted_from_when_it_was_opened()
    {
        _studio.Tells("bought 250 ml saffron 6.90 lot W-7");
        _studio.Now += TimeSpan.FromDays(10);
        _studio.Tells("opened W-7");

        Assert.Equal(
            ["29 Dec 501 Old soon: saffron W-7 on 4 Jan, 250 ml.", "5 Jan 501 Gone old: saffron W-7 since 4 Jan, 250 ml."],
            Days(40));
    }

    [Theory]
    [InlineData("used 250 ml saffron")]
    [InlineData("stop lot W-7 lumpy")]
    public void What_is_gone_or_stopped_goes_old_unsaid(string words)
    {
        _studio.Tells("bought 250 ml saffron 6.90 lot W-7");
        _studio.Now += TimeSpan.FromDays(10);
        _studio.Tells(words);

        Assert.DoesNotContain(Days(40), said => said.Contains("ld", StringComparison.Ordinal) && said.Contains("W-7", StringComparison.Ordinal));
    }

    [Fact]
    public void A_batch_is_told_to_who_mixed_it_too()
    {
        _studio.Tells("material medium keeps 10 days");
        _studio.Tells("bought 1 L neutral base 14.00");
        _studio.Tells("bought 1 L gloss varnish 14.00");
        _studio.Tells("mix medium 400 ml", "Pia");

        // Ten days: told five before, half of them (common practice), and on 5 December.
        Assert.Equal(
            [
                "1 Dec 501 Old soon: batch 1 (medium) on 5 Dec, 400 ml.",
                "1 Dec 502 Old soon: batch 1 (medium) on 5 Dec, 400 ml.",
                "6 Dec 501 Gone old: batch 1 (medium) since 5 Dec, 400 ml.",
                "6 Dec 502 Gone old: batch 1 (medium) since 5 Dec, 400 ml.",
            ],
            Days(20).Where(said => said.Contains("batch", StringComparison.Ordinal)));
    }

    [Fact]
    public void Who_only_uses_the_shelf_hears_of_no_lot()
    {
        _studio.Tells("bought 250 ml saffron 6.90 lot W-7", "Pia");

        Assert.DoesNotContain(Days(40), said => said.Contains(" 502 ", StringComparison.Ordinal));
    }

    [Fact]
    public void After_a_long_silence_it_is_said_once_as_it_stands()
    {
        _studio.Tells("bought 250 ml saffron 6.90 lot W-7");
        _studio.Now += TimeSpan.FromDays(35);
        Look();

        Assert.Contains("Gone old: saffron W-7 since 25 Dec", Assert.Single(_studio.Ring()).Reply.PlainText, StringComparison.Ordinal);
        Look();
        Assert.Empty(_studio.Ring());
    }

    // Nine in the morning of each day: the shelf is looked over, then what is due is said.
    private List<string> Days(int count)
    {
        List<string> said = [];
        _studio.Now = new DateTimeOffset(_studio.Now.Date.AddHours(8), TimeSpan.Zero);
        for (var day = 0; day < count; day++)
        {
            _studio.Now += TimeSpan.FromDays(1);
            Look();
            said.AddRange(_studio.Ring().Select(ping =>
                $"{Show.Day(DateOnly.FromDateTime(_studio.Now.Date))} {ping.Chat} {ping.Reply.PlainText.Split('\n')[0].Trim()}"));
        }

        return said;
    }

    private void Look() => _studio.File.Write(session =>
        StockWatch.Look(session, new Studio(session, Sample.Practice, isSample: false), _studio.Now));
}
