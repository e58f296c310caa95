using StudioBot.Chat.Replies;
using StudioBot.Chat.Tests.Support;

namespace StudioBot.Chat.Tests.Asking;

public sealed class QuoteCommandTests
{
    private static readonly string Whole = Sample.Answer("quote 40cm round bloom resin 2 coats")!.PlainText;

    [Theory]
    [InlineData(@"Ask \d+\.\d\d EUR")]
    [InlineData(@"Materials +\d+\.\d\d")]
    [InlineData(@"Work, 95 min +23\.75")]       // 30 + 15 + 2·25 min at 15 an hour (common practice)
    [InlineData(@"Overhead +4\.75")]            // 95 min at 3 an hour (common practice)
    [InlineData(@"2 coats of 2\.5 mm")]
    [InlineData(@"9 in 10 by \d+ \w{3}, cured")]
    [InlineData(@"studio 20 °C, 55 %")]
    [InlineData(@"Taken: .*rate 15 an hour, markup 50 %")]
    [InlineData(@"Invented studio")]
    public void A_quote_holds(string pattern) => Assert.Matches(pattern, Whole);

    [Fact]
    public void Resin_makes_it_dearer_by_its_lots()
    {
        // 40 cm round, 2.5 mm, a tenth runs off: 345.6 mL a coat, A and B two to one; oldest lot first: 120 mL at 32/L,
        // then 29/L; 60 mL at 36/L, then 32/L; and two cups at 8.9 cents for each coat
        var plain = Materials("quote 40cm round bloom");
        var coated = Materials("quote 40cm round bloom 1 coat");
        var resin = 0.120 * 32 + (0.2304 - 0.120) * 29 + 0.060 * 36 + (0.1152 - 0.060) * 32 + 2 * 0.089;

        Assert.Equal(resin, coated - plain, 0.02);
    }

    [Fact]
    public void Own_figures_stand_in_for_the_usual_ones()
    {
        var text = Sample.Answer("quote 30cm panel bloom 4 colours rate 18 markup 0% labour 90 min")!.PlainText;

        Assert.Matches(@"Work, 90 min +27\.00", text);       // 1.5 h at 18
        Assert.DoesNotContain("Taken", text, StringComparison.Ordinal);
    }

    [Fact]
    public void Markup_is_on_the_cost()      // 50 % markup on the cost, not 50 % of the price
    {
        var rows = Rows("quote 30cm panel bloom");
        var price = double.Parse(rows["Ask"], System.Globalization.CultureInfo.InvariantCulture);

        Assert.Equal(1.5 * double.Parse(rows["Cost"], System.Globalization.CultureInfo.InvariantCulture), price, 0.011);
    }

    [Fact]
    public void Bare_tiles_kept_here_are_counted_and_panels_are_said_to_be_missing()
    {
        Assert.DoesNotContain("Without", Sample.Answer("quote 10cm tile bloom")!.PlainText, StringComparison.Ordinal);
        Assert.Contains("Without bare surface", Whole, StringComparison.Ordinal);
    }

    [Fact]
    public void Its_materials_stand_behind_a_button()
    {
        var button = Sample.Answer("quote 40cm round bloom resin 2 coats")!.Buttons.Single(one => one.Label == "Materials");

        Assert.Matches(@"resin A +\d", Sample.Answer(button.Line)!.PlainText);
    }

    private static double Materials(string words) =>
        double.Parse(Rows(words)["Materials"], System.Globalization.CultureInfo.InvariantCulture);

    private static Dictionary<string, string> Rows(string words)
    {
        var reply = Sample.Answer(words)!;
        var rows = reply.Blocks.OfType<Block.Figures>().Single().Rows.ToDictionary(row => row.Name, row => row.Value);
        rows["Ask"] = reply.Blocks.OfType<Block.Headline>().Single().Text.Split(' ')[1];
        return rows;
    }
}
