using StudioBot.Craft.Costs;

namespace StudioBot.Craft.Tests.Costs;

public sealed class QuoteTests
{
    [Fact]
    public void Half_on_top_is_a_third_of_the_price()
    {
        // Common practice: 50 % markup is 33 % margin.
        var quote = Quote.ByMarkup(Money.From(40), 0.5m);

        Assert.Equal(0.5m, quote.Markup);
        Assert.Equal(1 / 3m, quote.Margin!.Value, 10);
    }

    [Fact]
    public void Tax_comes_last_and_apart()
    {
        var quote = Quote.ByMargin(Money.From(40), 0.5m);

        Assert.Equal(Money.From(80), quote.Price);
        Assert.Equal(Money.From(15.20m), quote.Tax(0.19m));
    }

    [Fact]
    public void A_gift_has_no_share()
    {
        Assert.Null(new Quote(default, Money.From(5)).Markup);
        Assert.Null(new Quote(Money.From(5), default).Margin);
    }

    [Fact]
    public void A_margin_of_all_of_it_is_refused() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Quote.ByMargin(Money.From(40), 1));
}
