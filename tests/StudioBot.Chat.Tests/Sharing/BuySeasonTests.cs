using StudioBot.Chat.Tests.Support;
using StudioBot.Craft.Units;
using StudioBot.Records.Acts;
using StudioBot.Records.Materials;
using StudioBot.Records.Workshops;

namespace StudioBot.Chat.Tests.Sharing;

/// <summary>30 ml on each fourth day, but 60 ml in the five weeks after the first eight. By hand (SeasonTests): those five weeks took 2.06 times as much a
/// day, which counts as 1.174; 7.5 a day become 8.81.</summary>
public sealed class BuySeasonTests : IDisposable
{
    private const int Year = 52 * 7;

    private readonly LiveStudio _studio = LiveStudio.Empty();
    private readonly DateTimeOffset _first;

    public BuySeasonTests() => _first = _studio.Now;

    public void Dispose() => _studio.Dispose();

    [Fact]
    public void The_same_weeks_of_last_year_count_once_a_year_is_on_record()
    {
        Uses(0);

        var said = _studio.Hear("buy saffron");

        Assert.Matches(@"A day takes +8\.8\d* ml", said);
        Assert.Contains("Last year these weeks took 2.1 times those before; counted as 1.2.", said.Replace('\n', ' '), StringComparison.Ordinal);
        Assert.Contains("with last year's season", _studio.Hear("stock saffron").Replace('\n', ' '), StringComparison.Ordinal);
    }

    [Fact]
    public void A_book_of_less_than_a_year_and_the_eight_weeks_before_knows_no_season()
    {
        Uses(1);

        var said = _studio.Hear("buy saffron");

        Assert.Matches(@"A day takes +7\.5 ml", said);
        Assert.DoesNotContain("Last year", said, StringComparison.Ordinal);
    }

    [Fact]
    public void What_a_workshop_took_is_no_everyday_use()
    {
        Uses(1);
        _studio.Now = _first.AddDays(Year + 50);            // within the last eight weeks
        _studio.Tells("used 400 ml saffron");
        Reserve(400, _studio.Now.AddMinutes(-5));
        _studio.Now = _first.AddDays(Year + 55);

        Assert.Matches(@"A day takes +7\.5 ml", _studio.Hear("buy saffron"));
    }

    // Told the next morning for that day, or for the one before; 150 of it on the day itself, the rest the next morning.
    [Theory]
    [InlineData("", "used 400 ml saffron")]
    [InlineData("", "used 400 ml saffron yesterday")]
    [InlineData("used 150 ml saffron", "used 250 ml saffron")]
    public void What_a_workshop_took_may_be_booked_the_day_after_and_its_page_says_so(string thatDay, string nextDay)
    {
        Uses(1);
        _studio.Now = _first.AddDays(Year + 50);
        Reserve(400, _studio.Now.AddMinutes(-5));
        if (thatDay.Length > 0)
        {
            _studio.Tells(thatDay);
        }

        _studio.Now = _first.AddDays(Year + 51);
        _studio.Tells(nextDay);
        _studio.Now = _first.AddDays(Year + 55);

        var said = _studio.Hear("buy saffron");
        Assert.Matches(@"A day takes +7\.5 ml", said);
        Assert.Contains("Not in it: 400 ml for workshops, as used on their day or the next.", said.Replace('\n', ' '), StringComparison.Ordinal);
    }

    // 30 ml were used on the day of the workshop anyway and the next day none, so 30 of 400 are taken off; those two days later are everyday use:
    // 14 × 30 ml + 400 ml − 30 ml over 56 days, 14.107 ml.
    [Fact]
    public void What_is_used_later_is_everyday_use()
    {
        Uses(1);
        _studio.Now = _first.AddDays(Year + 48);            // a day of use
        Reserve(400, _studio.Now.AddMinutes(-5));
        _studio.Now = _first.AddDays(Year + 50);
        _studio.Tells("used 400 ml saffron");
        _studio.Now = _first.AddDays(Year + 55);

        Assert.Matches(@"A day takes +14\.11 ml", _studio.Hear("buy saffron"));
    }

    [Theory]
    [InlineData(5, "Counts the workshop of Fri 28 Jan.")]                       // of 20,000 ml that were bought
    [InlineData(40000, "Counts the workshop of Fri 28 Jan: order by 21 Jan.")]  // an order takes a week
    public void Its_page_says_that_a_workshop_counts_and_until_when_it_is_to_be_ordered(double takes, string says)
    {
        Uses(1);
        Reserve(takes, _studio.Now.AddDays(10));

        Assert.Contains(says, _studio.Hear("buy saffron").Replace('\n', ' '), StringComparison.Ordinal);
    }

    // From this day on; the last look is on day 419.
    private void Uses(int from)
    {
        _studio.Now = _first.AddDays(from);
        _studio.Tells("material new saffron 250 ml 6.90");
        _studio.Tells("bought 20000 ml saffron 50.00");
        for (var day = 0; day <= Year + 55; day += 4)
        {
            _studio.Now = _first.AddDays(Math.Max(day, from)).AddHours(1);
            _studio.Tells(day is >= 56 and < 56 + 35 ? "used 60 ml saffron" : "used 30 ml saffron");
        }

        _studio.Now = _first.AddDays(Year + 55).AddHours(2);
    }

    private void Reserve(double millilitres, DateTimeOffset at) => _studio.File.Write(session => session.Workshops.Add(
        at,
        8,
        "reserve",
        [new WorkshopPart(session.Materials.All().Single(one => one.Name == "saffron"), new Amount.ByVolume(Volume.FromMillilitres(millilitres)))],
        session.Acts.Begin(new NewAct("reserve", session.Members.All()[0], "reserve", _studio.Now))));
}
