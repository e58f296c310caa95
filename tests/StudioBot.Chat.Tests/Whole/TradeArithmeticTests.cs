using StudioBot.Chat.Tests.Support;
using StudioBot.Records.Members;

namespace StudioBot.Chat.Tests.Whole;

/// <summary>The figures that the trade's arithmetic is checked by, read in replies.</summary>
public sealed class TradeArithmeticTests : IDisposable
{
    private readonly LiveStudio studio = LiveStudio.Empty();

    public void Dispose() => studio.Dispose();

    [Theory]
    // LED-01: a textbook's example of the largest remainder (Hamilton)
    [InlineData("bought 78.26 ml white, 17.39 ml magenta, 4.35 ml ultramarine 1.00", "white 0.78, magenta 0.18, ultramarine 0.04")]
    // LED-02: quotas 3.5, 2.1, 1.4
    [InlineData("bought 50 ml white, 30 ml magenta, 20 ml ultramarine 0.07", "white 0.04, magenta 0.02, ultramarine 0.01")]
    // LED-03: the tie goes to the first
    [InlineData("bought 1 L white, 1 L magenta, 1 L ultramarine 10.00", "white 3.34, magenta 3.33, ultramarine 3.33")]
    public void A_price_is_split_to_the_cent(string words, string shares) =>
        Assert.Contains($"({shares}): credited to Mira.", studio.Tells(words), StringComparison.Ordinal);

    [Fact]
    public void Postage_is_split_to_the_cent()
    {
        // LED-04: 24.90 by 1.20 | 2.50 | 0.60 is 6.95 | 14.48 | 3.47 (largest remainder), each on top of its price
        Assert.Contains(
            "(white 8.15, magenta 16.98, ultramarine 4.07)",
            studio.Tells("bought 100 ml white 1.20\n100 ml magenta 2.50\n100 ml ultramarine 0.60\npostage 24.90"),
            StringComparison.Ordinal);
    }

    [Fact]
    public void What_three_makers_owe_is_split_with_its_sign()
    {
        // LED-05: −10.00 by 1|1|1 is −3.34 | −3.33 | −3.33
        studio.File.Write(session => session.Members.Add("Tomas", Role.Member, studio.Now));
        studio.Say("pour 20cm panel bloom 4 colours", "Mira");
        studio.Say("pour 20cm panel bloom 4 colours", "Pia");
        studio.Say("pour 20cm panel bloom 4 colours", "Tomas");

        var said = studio.Tells("sold 1 2 3 for 100 studio 10%", agreed: true);

        Assert.Contains("Booked: Mira −3.34, Pia −3.33, Tomas −3.33, studio +10.00.", said, StringComparison.Ordinal);
        Assert.Equal([-334, -333, -333], new[] { "Mira", "Pia", "Tomas" }.Select(name => studio.Balances()[name]));
    }

    [Fact]
    public void Two_powders_are_compared_in_use()
    {
        // CST-01, -02, -03: 5.50/10 g at 1 tsp of 2.5 g, 18/50 g at 0.3 tsp, per 20 ml: worked by hand
        var said = studio.Hear("compare 5.50/10g 2.5 g per 20ml vs 18/50g 0.75 g per 20ml");

        Assert.Matches(@"(?m)6\.8[78] EUR$", said);
        Assert.Matches(@"(?m)1\.35 EUR$", said);
        // The break-even dose is 1.5278 tsp: 3.8194 g at 2.5 g a spoon
        Assert.Contains("at 3.82 g", said, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("markup 50%", "60.00")]     // CST-04: cost (1 + markup)
    [InlineData("markup 100%", "80.00")]    // CST-05: a margin of half the price is a markup of all the cost
    public void A_price_is_the_cost_and_its_markup(string markup, string price)
    {
        // 100 min at 21.00 an hour and 3.00 of overhead are 40.00; nothing here has a price yet
        var said = studio.Hear($"quote 30cm panel labour 100 min rate 21 {markup}");

        Assert.StartsWith($"Ask {price} EUR", said, StringComparison.Ordinal);
        Assert.Matches(@"Cost +40\.00", said);
    }

    [Fact]
    public void A_piece_costs_materials_work_and_overhead()
    {
        // CST-06: 14.20 + 1.5 h x (18 + 4) = 47.20: worked by hand; only the tile has a price here
        studio.Tells("bought 1 tile 10cm 14.20");

        var said = studio.Hear("quote 10cm tile labour 1.5 h rate 18 overhead 4 markup 0%");

        Assert.StartsWith("Ask 47.20 EUR", said, StringComparison.Ordinal);
        Assert.Matches(@"Materials +14\.20", said);
        Assert.Matches(@"Overhead +6\.00", said);
    }
}
