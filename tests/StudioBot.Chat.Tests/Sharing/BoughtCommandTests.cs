using StudioBot.Chat.Tests.Support;

namespace StudioBot.Chat.Tests.Sharing;

/// <summary>Figures are worked by hand from the invented studio's shelf.</summary>
public sealed class BoughtCommandTests : IDisposable
{
    private readonly LiveStudio studio = LiveStudio.Sample();

    public void Dispose() => studio.Dispose();

    [Fact]
    public void It_enters_the_shelf_as_a_lot_and_its_payer_is_credited()
    {
        // 950 ml of medium are there; 24.90 / 2
        Assert.Equal(
            "2000 ml medium bought: 2950 ml on the shelf.\nLot M-8.\n24.90, each 12.45: credited to Mira.",
            studio.Tells("bought 2 x 1 L medium 24.90 lot M-8"));
        Assert.Equal(2000, studio.Left("M-8"));
        Assert.Equal(2490, studio.Look(view => view.Lots.All().Single(lot => lot.Label == "M-8").Price!.Value.Cents));
        Assert.Equal(new() { ["Mira"] = 2490, ["studio"] = -2490 }, studio.Balances());
    }

    [Theory]
    [InlineData("bought 500 ml white 5 lot =HYPERLINK", "=HYPERLINK")]
    [InlineData("bought 500 ml white lot winterberry 5", "winterberry")]
    [InlineData("bought 500 ml white 5 lot -W9", "-W9")]
    public void What_can_be_no_label_is_not_dropped_in_silence(string words, string label) =>
        Assert.StartsWith(
            $"“{label}” can't be a lot's label: that is a bare word with a digit, or of four letters at most. Nothing recorded.",
            studio.Refuses(words).PlainText,
            StringComparison.Ordinal);

    [Fact]
    public void A_price_or_a_small_word_is_no_label_though_a_lot_is_called_so()
    {
        studio.Tells("bought 500 ml white 5.00 lot 18");
        studio.Tells("bought 500 ml magenta 5.00 lot A");

        Assert.Contains("18.00: credited to Mira.", studio.Tells("bought 1 L white 18"), StringComparison.Ordinal);
        Assert.Contains("\nFrom W-1.\n", studio.Tells("used 20 ml white for a friend"), StringComparison.Ordinal);
    }

    [Fact]
    public void Each_says_the_price_of_one_pack()
    {
        Assert.Contains("54.00, each 18.00: credited to Mira.", studio.Tells("bought 3 x 50g blue mica 18 each"), StringComparison.Ordinal);
        Assert.Equal(196, studio.Level("blue mica"));   // 46 + 150
        Assert.Equal(5400, studio.Balances()["Mira"]);
    }

    [Fact]
    public void A_kit_is_one_lot_of_two_materials_and_one_price_by_quantity()
    {
        // 1000 g / 1.13 = 884.956 ml and 450 g / 0.98 = 459.184 ml: 42.00 × 884.956 / 1344.140 = 27.65
        var said = studio.Tells("bought 1kg resin A + 450g hardener B 42.00 lot R-4");

        Assert.Contains("42.00 (resin A 27.65, hardener B 14.35): credited to Mira.", said, StringComparison.Ordinal);
        Assert.Equal([2765, 1435], studio.Look(view => view.Lots.All().Where(lot => lot.Label == "R-4").Select(lot => lot.Price!.Value.Cents).ToList()));
        Assert.Equal(3004.956, studio.Level("resin A"));    // 120 + 2000 + 884.956
    }

    [Theory]
    [InlineData("bought 1 L white 12.00\n500 ml magenta 8.00")]
    [InlineData("bought 1 L white 12.00\nbought 500 ml magenta 8.00")]
    [InlineData("bought 1 L white 12.00, 500 ml magenta 8.00")]
    public void A_receipt_has_a_price_for_each_line(string words)
    {
        Assert.Contains("20.00 (white 12.00, magenta 8.00): credited to Mira.", studio.Tells(words), StringComparison.Ordinal);
        Assert.Equal(2000, studio.Balances()["Mira"]);
        Assert.Equal([1200, 800], studio.Look(view => view.Lots.All().TakeLast(2).Select(lot => lot.Price!.Value.Cents).ToList()));
    }

    [Fact]
    public void Postage_is_spread_over_the_lines_by_price()
    {
        // 5.00 × 12 / 20 = 3.00 and 5.00 × 8 / 20 = 2.00
        Assert.Contains(
            "25.00 (white 15.00, magenta 10.00): credited to Mira. Postage 5.00 is in it, by price.",
            studio.Tells("bought 1 L white 12.00\n500 ml magenta 8.00\npostage 5.00"),
            StringComparison.Ordinal);
        Assert.Equal(2500, studio.Balances()["Mira"]);
    }

    [Theory]
    [InlineData("bought 1 L white 12.00\n500 ml magenta")]
    [InlineData("bought 1 L white 12.00\n500 ml magenta\npostage 5.00")]
    [InlineData("bought 1 L white 12.00\n500 ml cola 8.00")]
    public void A_receipt_is_booked_whole_or_not_at_all(string words)
    {
        var said = studio.Say(words);
        Assert.True(said.Reply.IsTrouble);
        Assert.False(said.Recorded);
        Assert.Empty(studio.Balances());
    }

    [Fact]
    public void Without_a_price_nobody_is_credited()
    {
        Assert.Equal(
            "1000 ml white bought: 1820 ml on the shelf.\nNo price: nobody is credited.",
            studio.Tells("bought 1L white"));
        Assert.Empty(studio.Balances());
    }

    [Fact]
    public void The_payer_is_whom_it_is_told_for()
    {
        studio.Tells("Pia bought 1L white 18.50", agreed: true);

        Assert.Equal(new() { ["Pia"] = 1850, ["studio"] = -1850 }, studio.Balances());
    }

    [Fact]
    public void A_label_that_stands_on_the_shelf_is_refused_and_the_next_is_shown()
    {
        var reply = studio.Refuses("bought 1 L white 18.50 lot W-2");

        Assert.StartsWith("Lot W-2 of white is here since 9 Nov. Nothing recorded.", reply.PlainText, StringComparison.Ordinal);
        Assert.EndsWith("bought 1000 ml white lot W-3", reply.PlainText, StringComparison.Ordinal);
    }

    [Fact]
    public void What_is_counted_shares_no_price_with_what_is_measured() =>
        Assert.Contains("can't be shared", studio.Refuses("bought 1 L white + 40 cups 30.00").PlainText, StringComparison.Ordinal);

    [Fact]
    public void The_books_have_one_currency() =>
        Assert.Contains("they are in EUR", studio.Refuses("bought 1 L white $18.50").PlainText, StringComparison.Ordinal);

    [Theory]
    [InlineData("bought 2 x 1 L medium 24.90 lot M-8")]
    [InlineData("bought 1kg resin A + 450g hardener B 42.00 lot R-4")]
    [InlineData("bought 40 tiles 10cm 36.00")]
    public void It_can_be_taken_back(string words)
    {
        studio.IsUndone(words);
        Assert.Empty(studio.Balances());
    }

    [Fact]
    public void A_label_is_free_again_when_its_delivery_was_taken_back()
    {
        studio.IsUndone("bought 1 L white 18.50 lot W-3");
        studio.Now += TimeSpan.FromMinutes(5);
        studio.Tells("bought 1 L white 18.50 lot W-3");
        Assert.Equal(1000, studio.Left("W-3"));
    }

    [Fact]
    public void The_kitty_can_buy_and_all_see_it()
    {
        studio.Tells("paid 40 to kitty", "Tomas");

        Assert.Contains("18.50: out of the kitty, nobody is credited.", studio.Tells("bought 1 L white 18.50 from kitty", "Pia"), StringComparison.Ordinal);
        Assert.Equal(new() { ["Tomas"] = 4000, ["studio"] = -1850, ["kitty"] = -2150 }, studio.Balances());
        Assert.Contains(
            "In the kitty: 21.50 EUR\nThis month, the newest first:\n25 Nov Pia    −18.50\n25 Nov Tomas  +40.00\n",
            studio.Hear("kitty", "Jonas"),
            StringComparison.Ordinal);
    }

    [Fact]
    public void What_the_kitty_lacks_is_asked_about()
    {
        var button = Assert.Single(studio.Refuses("bought 1 L white 18.50 from kitty").Buttons);
        studio.Tells(button.Line, agreed: true);
        Assert.Equal(1850, studio.Balances()["kitty"]);
    }

    [Fact]
    public void Out_of_the_kitty_comes_a_price() =>
        Assert.Contains("needs a price", studio.Refuses("bought 1 L white from kitty").PlainText, StringComparison.Ordinal);

    [Theory]
    [InlineData("bought 2x1l white 35 eur paid by me", "Mira")]
    [InlineData("bought 2 x 1 L white 35 paid by Pia", "Pia")]
    public void Who_paid_may_be_said_in_plain_words(string words, string payer) =>
        Assert.Contains($"35.00, each 17.50: credited to {payer}.", studio.Tells(words), StringComparison.Ordinal);
}
