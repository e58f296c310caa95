using StudioBot.Chat.Tests.Asking;
using StudioBot.Chat.Tests.Support;

namespace StudioBot.Chat.Tests.Sharing;

public sealed class BuyCommandTests : IDisposable
{
    private readonly LiveStudio _studio = LiveStudio.Empty();

    public void Dispose() => _studio.Dispose();

    [Fact]
    public void What_is_low_in_the_invented_studio_is_bought_in_whole_packs()
    {
        // Worked by hand: magenta 140 of 150 ml, never used; up to 1.25 x 150 are 187.5, so 47.5 ml: one of 250 at 8.20.
        // Ochre 85 of 100 ml; up to 125, so 40 ml: one of 250 at 6.90.
        var said = Phone.Says("buy");

        Assert.StartsWith("To buy: 2 materials, 15.10 EUR", said, StringComparison.Ordinal);
        Assert.Contains("At your own low level:", said, StringComparison.Ordinal);
        Assert.Matches("magenta +1 x 250 ml, 8.20", said);
        Assert.Matches("ochre +1 x 250 ml, 6.90", said);
    }

    // Worked by hand: 30 ml on each fourth of 56 days are 7.5 a day; the deviation is the root of
    // (14 x 22.5² + 42 x 7.5²) / 55 = 171.82, 13.108; m = 8 x 7.5 = 60, s = 13.108 x √8 = 37.075, c = 0.618;
    // 60 x (1 - 0.0424 + 0.3388)³ = 130.7 ml (handbook section 12).
    [Theory]
    [InlineData(550, true)]      // 130 ml left
    [InlineData(551, false)]     // 131 ml left
    public void A_level_under_its_reorder_point_is_bought(int bought, bool isUnder)
    {
        EightWeeks(bought);

        Assert.Equal(isUnder, _studio.Hear("buy").StartsWith("To buy: saffron", StringComparison.Ordinal));
    }

    [Fact]
    public void Its_page_says_why()
    {
        EightWeeks(550);

        var said = _studio.Hear("buy saffron");

        // Up to 130.7 + 28 x 7.5 = 340.7 ml, so 210.7 of the 250; 130 / 7.5 = 17.3 days; 39.3 ml over are 5.2 days.
        Assert.StartsWith("Buy saffron: 1 x 250 ml, 6.90 EUR", said, StringComparison.Ordinal);
        Assert.Matches("Left +130 ml", said);
        Assert.Matches("Lasts about +17 days", said);
        Assert.Matches("8 times of 10 +9 to 33 days", said);       // 9.75 and 33.8: worked by hand beside the interval's own tests
        Assert.Matches("A day takes +7.5 ml", said);
        Assert.Matches("Reorder point +130.7 ml", said);
        Assert.Contains("Rests on 56 days, 14 of them with use; an order takes 7 days unless set.", said, StringComparison.Ordinal);
        Assert.Contains("39.3 ml over lasts about 5 days.", said, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(180, "before")]     // 39.3 ml over are 5 days; 130 + 250 ml at 7.5 a day are 50.7 days
    [InlineData(50, "not before")]
    public void What_is_over_is_held_against_how_long_it_keeps(int keeps, string when)
    {
        EightWeeks(550);
        _studio.Tells($"material saffron keeps {keeps} days");

        Assert.Contains(
            $"39.3 ml over is gone in 5 days, all of it in 50 days: {when} it is {keeps} days old.",
            _studio.Hear("buy saffron").Replace('\n', ' '),
            StringComparison.Ordinal);
    }

    [Fact]
    public void Use_in_lumps_is_said_to_be_so()
    {
        _studio.Tells("material new saffron 250 ml 6.90");
        _studio.Tells("bought 2000 ml saffron 50.00");
        var first = _studio.Now;
        foreach (var day in new[] { 3, 10, 20, 30, 40, 55 })      // six days of 56: deviation / mean = √(50 / 6) = 2.9
        {
            _studio.Now = first.AddDays(day);
            _studio.Tells("used 200 ml saffron");
        }

        Assert.Contains("6 of them with use, in lumps;", _studio.Hear("buy saffron").Replace('\n', ' '), StringComparison.Ordinal);
        Assert.Contains(" a day, in lumps.", _studio.Hear("stock saffron").Replace('\n', ' '), StringComparison.Ordinal);
    }

    [Fact]
    public void The_list_says_why_in_its_heading()
    {
        EightWeeks(550);

        var said = _studio.Hear("buy");

        Assert.StartsWith("To buy: saffron, 6.90 EUR", said, StringComparison.Ordinal);
        Assert.Contains("Too little until an order comes:", said, StringComparison.Ordinal);
        Assert.Matches("saffron +1 x 250 ml, 6.90", said);
    }

    [Fact]
    public void What_was_undone_was_not_used()
    {
        EightWeeks(850);                                                                 // 430 ml left
        _studio.Tells("used 299 ml saffron");                                              // 131 ml, and far more a day
        Assert.StartsWith("To buy: saffron", _studio.Hear("buy"), StringComparison.Ordinal);

        _studio.Say("undo");

        Assert.StartsWith("Nothing to buy", _studio.Hear("buy"), StringComparison.Ordinal);
        Assert.Matches("A day takes +7.5 ml", _studio.Hear("buy saffron"));
    }

    [Fact]
    public void Few_uses_are_a_guess()
    {
        _studio.Tells("material new saffron 250 ml 6.90");
        _studio.Tells("bought 250 ml saffron 6.90");
        _studio.Tells("used 140 ml saffron");

        // Worked by hand: 140 ml in two weeks at least are 10 a day, deviation 15 (1.5 times it: common practice);
        // m = 80, s = 15 x √8 = 42.43, c = 0.530; 80 x (1 - 0.0313 + 0.2908)³ = 159.8 ml, over the 110 left.
        var list = _studio.Hear("buy");
        Assert.Contains("Too little until an order comes, by few uses yet:", list.Replace("\n", " ", StringComparison.Ordinal), StringComparison.Ordinal);
        var said = _studio.Hear("buy saffron");
        Assert.Matches("Reorder point +159.8 ml", said);
        Assert.Contains("Little data: used on 1 day in 14 days; a guess.", said, StringComparison.Ordinal);
    }

    [Fact]
    public void Without_a_pack_only_the_amount_is_said()
    {
        _studio.Tells("material new saffron 250 ml 6.90");
        _studio.File.Write(session =>
        {
            var saffron = session.Materials.All().Single(one => one.Name == "saffron");
            session.Materials.Change(
                saffron with { Packs = [], Low = StockedStudio.Ml(100) },
                session.Acts.Begin(new Records.Acts.NewAct("material", session.Members.All()[0], "packs", _studio.Now)));
        });
        _studio.Tells("bought 90 ml saffron 6.90");

        // Up to 1.25 x 100 ml, so 35.
        Assert.StartsWith("Buy saffron: 35 ml\n", _studio.Hear("buy saffron"), StringComparison.Ordinal);
        Assert.StartsWith("To buy: saffron\n", _studio.Hear("buy"), StringComparison.Ordinal);
    }

    [Fact]
    public void A_longer_delivery_is_bought_for_earlier()
    {
        EightWeeks(700);                                                                 // 280 ml left
        Assert.StartsWith("Nothing to buy", _studio.Hear("buy"), StringComparison.Ordinal);
        _studio.File.Write(session => session.Materials.Change(
            session.Materials.All().Single(one => one.Name == "saffron") with { LeadTime = TimeSpan.FromDays(28) },
            session.Acts.Begin(new Records.Acts.NewAct("material", session.Members.All()[0], "lead", _studio.Now))));

        // Worked by hand: m = 29 x 7.5 = 217.5, s = 13.108 x √29 = 70.59; the gamma form 345.0 ml.
        Assert.StartsWith("To buy: saffron", _studio.Hear("buy"), StringComparison.Ordinal);
        Assert.Matches("Reorder point +345 ml", _studio.Hear("buy saffron"));
    }

    [Theory]
    [InlineData("whats low")]
    [InlineData("what's running low?")]
    [InlineData("shopping list")]
    public void What_is_low_is_asked_in_plain_words(string words) => Assert.Equal(Sample.Answer("buy")!.PlainText, Sample.Answer(words)!.PlainText);

    [Theory]
    [InlineData("buy")]
    [InlineData("buy white")]
    [InlineData("buy magenta")]
    [InlineData("buy mica")]
    [InlineData("shopping list")]
    public void It_fits_a_phone(string words) => Phone.Fits(words);

    // 56 days with today, 30 ml on each fourth of them.
    private void EightWeeks(int bought)
    {
        _studio.Tells("material new saffron 250 ml 6.90");
        _studio.Tells($"bought {bought} ml saffron 16.00");
        var first = _studio.Now;
        for (var day = 3; day < 56; day += 4)
        {
            _studio.Now = first.AddDays(day);
            _studio.Tells("used 30 ml saffron");
        }
    }
}
