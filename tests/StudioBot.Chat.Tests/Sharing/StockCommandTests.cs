using StudioBot.Chat.Replies;
using StudioBot.Chat.Tests.Asking;
using StudioBot.Chat.Tests.Support;
using StudioBot.Records.Acts;

namespace StudioBot.Chat.Tests.Sharing;

public sealed class StockCommandTests
{
    private readonly StockedStudio _studio = new();

    [Fact]
    public void Its_pages_show_every_material_once()
    {
        List<string> names = [];
        for (string? line = "stock"; line is not null;)
        {
            var reply = Sample.Answer(line)!;
            names.AddRange(reply.Blocks.OfType<Block.Figures>().SelectMany(block => block.Rows).Select(row => row.Name));
            line = reply.Buttons.FirstOrDefault(button => button.Label == "More")?.Line;
        }

        Assert.Equal(Sample.Studio.View.Materials.All().Select(material => material.Name).Order(), names.Order());
    }

    [Fact]
    public void The_way_back_leads_to_the_first_page() =>
        Assert.Equal(
            Phone.Says("stock"),
            Phone.Says(Sample.Answer("stock page 2")!.Buttons.Single(button => button.Label == "Back").Line));

    [Fact]
    public void Behind_the_last_page_stands_the_last() => Assert.Equal(Phone.Says("stock page 4"), Phone.Says("stock page 40"));

    [Fact]
    public void What_is_low_is_said_in_words()             // the invented studio: magenta 140 of 150 ml, ochre 85 of 100 ml
    {
        var said = Phone.Says("stock");

        Assert.StartsWith("22 materials, low: magenta and ochre", said, StringComparison.Ordinal);
        Assert.Matches(@"magenta +140 ml, low", said);
        Assert.Matches(@"white +820 ml\s", said);
    }

    [Fact]
    public void A_word_that_stands_in_several_names_lists_them_all()
    {
        var reply = Sample.Answer("stock mica")!;

        Assert.StartsWith("4 materials, none low", reply.PlainText, StringComparison.Ordinal);
        Assert.Equal(
            ["stock blue mica", "stock gold mica", "stock silver mica", "stock copper mica"],
            reply.Buttons.Select(button => button.Line));
    }

    [Fact]
    public void A_material_shows_its_lots_with_what_is_left_of_each()
    {
        var said = Phone.Says("stock white");

        Assert.StartsWith("White: 820 ml (low at 300 ml)", said, StringComparison.Ordinal);
        Assert.Matches("W-1, 14 Sep +40 of 1000 ml", said);
        Assert.Matches("W-2, 9 Nov +780 of 1000 ml", said);
        Assert.Contains("The books opened today with 820 ml; not counted since. (Invented studio.)", said, StringComparison.Ordinal);
    }

    [Fact]
    public void A_lot_without_a_label_keeps_its_day_on_the_row() =>
        Assert.Matches("no label, 12 Oct +640 of 1000 ml", Phone.Says("stock isopropyl"));

    [Fact]
    public void Counted_things_have_no_unit() => Assert.Matches("no label, 26 Oct +26 of 40", Phone.Says("stock tile 10cm"));

    [Fact]
    public void A_level_comes_from_the_last_count_and_what_came_and_went_since()
    {
        var white = _studio.Liquid("white");
        _studio.Bought(white, 1000, 20, "W-1");
        _studio.Went(white, 100, 21);
        _studio.Write(session => session.Stock.Count(white, StockedStudio.Ml(850), _studio.Said(session, "count", 22, who: _studio.Pia)));
        _studio.Bought(white, 200, 23, "W-2");
        _studio.Went(white, 50, 24, who: _studio.Pia);

        var said = _studio.Says("stock white");

        Assert.StartsWith("White: 1000 ml\n", said.ReplaceLineEndings("\n"), StringComparison.Ordinal);     // 850 + 200 - 50
        Assert.Contains("Counted 850 ml 22 Nov by Pia. Since then 200 ml in, 50 ml out.", said, StringComparison.Ordinal);
        Assert.Contains("Last in: 200 ml bought 23 Nov by Mira. Last out: 50 ml used 24 Nov by Pia.", said, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(21, "Counted 150 ml 22 Nov by Pia. Since then 30 ml out.")]
    [InlineData(23, "Counted 150 ml 22 Nov by Pia. Since then 30 ml out, 100 ml stopped.")]    // the 150 were 50 and these 100
    public void A_lot_that_was_stopped_is_in_a_count_before_it_only(int stopped, string expected)
    {
        var white = _studio.Liquid("white");
        var (first, _) = (_studio.Bought(white, 100, 12, "W-2"), _studio.Bought(white, 200, 11, "W-1"));
        void Stop() => _studio.Write(session => session.Stock.Stop(first, null, _studio.Said(session, "stop", stopped)));
        if (stopped < 22)
        {
            Stop();
        }

        _studio.Write(session => session.Stock.Count(white, StockedStudio.Ml(150), _studio.Said(session, "count", 22, who: _studio.Pia)));
        if (stopped > 22)
        {
            Stop();
        }

        _studio.Went(white, 30, 24);

        Assert.Contains(expected, _studio.Says("stock white"), StringComparison.Ordinal);
    }

    [Fact]
    public void The_last_is_the_last_that_happened_however_late_it_was_written()
    {
        var white = _studio.Liquid("white");
        _studio.Bought(white, 1000, 20);
        _studio.Went(white, 50, 24);
        _studio.Bought(white, 200, 10);
        _studio.Went(white, 70, 22, who: _studio.Pia);

        Assert.Contains(
            "Last in: 1000 ml bought 20 Nov by Mira. Last out: 50 ml used 24 Nov by Mira.",
            _studio.Says("stock white"),
            StringComparison.Ordinal);
    }

    [Fact]
    public void Where_a_count_found_more_than_came_what_came_is_no_whole()
    {
        var white = _studio.Liquid("white");
        _studio.Bought(white, 1000, 20);
        _studio.Write(session => session.Stock.Count(white, StockedStudio.Ml(2000), _studio.Said(session, "count", 22)));

        Assert.Matches(@"no label, 20 Nov +2000 ml\s", _studio.Says("stock white"));
    }

    [Fact]
    public void What_was_undone_neither_came_nor_went()
    {
        var white = _studio.Liquid("white");
        _studio.Bought(white, 500, 20);
        _studio.Went(white, 30, 21);
        var slip = _studio.Went(white, 400, 22);
        _studio.Write(session => session.Undo.Take(slip.Id, new NewAct("undo", _studio.Mira, "undo", StockedStudio.On(22))));

        var said = _studio.Says("stock white");

        Assert.StartsWith("White: 470 ml", said, StringComparison.Ordinal);
        Assert.Contains("All told 500 ml in, 30 ml out.", said, StringComparison.Ordinal);
        Assert.Contains("Last out: 30 ml used 21 Nov by Mira.", said, StringComparison.Ordinal);
    }

    [Fact]
    public void What_was_used_before_a_count_is_not_put_back_behind_it()
    {
        var white = _studio.Liquid("white");
        _studio.Bought(white, 500, 20);
        var used = _studio.Went(white, 100, 21);
        _studio.Write(session => session.Stock.Count(white, StockedStudio.Ml(390), _studio.Said(session, "count", 22)));
        _studio.Write(session => session.Undo.Take(used.Id, new NewAct("undo", _studio.Mira, "undo", StockedStudio.On(23))));

        var said = _studio.Says("stock white");

        Assert.StartsWith("White: 390 ml", said, StringComparison.Ordinal);                                // as it was found
        Assert.DoesNotContain("put back", said, StringComparison.Ordinal);
    }

    [Fact]
    public void Steady_use_says_how_long_it_lasts()
    {
        var white = _studio.Liquid("white");
        _studio.Bought(white, 150, 20);
        for (var day = 21; day <= 25; day++)
        {
            _studio.Went(white, 10, day);
        }

        // Worked by hand: 50 ml in two weeks at least are 3.571 a day; 100 ml left, so 28 days. The deviation is the root
        // of (500 - 2500 / 14) / 13 = 24.73; z²σ² = 40.61; a = 12.755 - 2.901 = 9.854, b = 714.3 + 40.6 = 754.9, the root
        // of b² - 40 000 a is 419.2: from 20 000 / 1174.1 = 17.03 to 1174.1 / 19.71 = 59.6 days.
        Assert.Contains("Lasts about 28 days (17 to 59) at 3.571 ml a day.", _studio.Says("stock white").ReplaceLineEndings(" "), StringComparison.Ordinal);
    }

    [Fact]
    public void What_was_used_but_once_lasts_by_little_data()
    {
        var white = _studio.Liquid("white");
        _studio.Bought(white, 100, 24);
        _studio.Went(white, 20, 25);

        // Worked by hand: 20 ml in two weeks at least are 1.429 a day; 80 ml left, so 56 days.
        var said = _studio.Says("stock white").ReplaceLineEndings(" ");
        Assert.Contains("Lasts about 56 days (", said, StringComparison.Ordinal);
        Assert.Contains("at 1.429 ml a day, by little data.", said, StringComparison.Ordinal);
    }

    [Fact]
    public void Opened_and_stopped_lots_are_named()
    {
        var white = _studio.Liquid("white");
        var (first, second) = (_studio.Bought(white, 100, 10, "W-1"), _studio.Bought(white, 100, 11, "W-2"));
        _studio.Write(session =>
        {
            session.Stock.Opened(second, _studio.Said(session, "opened", 12));
            session.Stock.Stop(first, "yellowed", _studio.Said(session, "stop", 13));
        });

        var said = _studio.Says("stock white");

        Assert.Contains("Opened: W-2 12 Nov.", said, StringComparison.Ordinal);
        Assert.Contains("Apart from it 100 ml stopped, drawn from only by name: W-1 (yellowed).", said, StringComparison.Ordinal);
    }

    [Fact]
    public void A_level_at_its_limit_is_low_and_none_is_none()
    {
        var white = _studio.Liquid("white", low: 100);
        var black = _studio.Liquid("lamp black", low: 50);
        _studio.Bought(white, 100, 20);

        Assert.StartsWith("White: 100 ml, low (at 100 ml)", _studio.Says("stock white"), StringComparison.Ordinal);
        Assert.StartsWith("Lamp black: none left, low (at 50 ml)", _studio.Says($"stock {black.Name}"), StringComparison.Ordinal);
        Assert.Contains("none, low", _studio.Says("stock"), StringComparison.Ordinal);
    }

    [Fact]
    public void A_studio_without_materials_has_nothing_on_its_shelf() =>
        Assert.StartsWith("Nothing is on the shelf", _studio.Says("stock"), StringComparison.Ordinal);

    [Fact]
    public void Many_lots_and_long_names_go_on_behind_a_button()
    {
        var white = _studio.Liquid("pearl of the longest night in deepest winter");
        for (var day = 1; day <= 20; day++)
        {
            _studio.Bought(white, 1000, day, $"A-LONG-LABEL-OF-{day}");
        }

        Assert.Equal($"stock {white.Name} page 2", _studio.Answer($"stock {white.Name}").Buttons[0].Line);
    }

    [Theory]
    [InlineData("stock")]
    [InlineData("stock page 2")]
    [InlineData("stock page 3")]
    [InlineData("stock white")]
    [InlineData("stock wite")]
    [InlineData("stock mica")]
    [InlineData("how much resin a is left")]
    public void It_fits_a_phone(string words) => Phone.Fits(words);

    // Ten days of 60 ml leave 100 of 700 ml: under the reorder point for a week's delivery, and no low level is set.
    [Fact]
    public void What_the_pings_call_low_the_list_and_the_week_call_low_too()
    {
        using var studio = LiveStudio.Empty();
        studio.Now = studio.Now.AddDays(-14);
        studio.Hear("bought 700 ml white 12.00");
        for (var day = 0; day < 10; day++)
        {
            studio.Now += TimeSpan.FromDays(1);
            studio.Hear("used 60 ml white");
        }

        Assert.Contains("low: white", studio.Hear("stock"));
        Assert.StartsWith("White: 100 ml, low", studio.Hear("stock white"));
        Assert.Contains("Low now: white 100 ml (buy ", studio.Hear("week"));
        Assert.StartsWith("To buy: white", studio.Hear("buy"));
    }
}
