using StudioBot.Chat.Tests.Support;

namespace StudioBot.Chat.Tests.Asking;

public sealed class CompareCommandTests
{
    [Theory]
    // price/pack × dose, to 100 mL of colour
    [InlineData("compare €9 / 25 g 2 g per 100ml versus €14/50g 3g per 100ml", "0.72", "0.84", "The first is cheaper")]
    [InlineData("compare 12/100ml 5 ml per 100ml vs 30/500ml 10 ml per 100ml", "0.60", "0.60", "Equal")]
    [InlineData("compare 5.50/10g 1 g per 20ml vs 18/50g 0.3 g per 20ml", "2.75", "0.54", "The second is cheaper")]
    public void What_colours_alike_is_compared_per_100_ml(string words, string first, string second, string verdict)
    {
        var text = Sample.Answer(words)!.PlainText;

        Assert.Contains(first, text, StringComparison.Ordinal);
        Assert.Contains(second, text, StringComparison.Ordinal);
        Assert.StartsWith(verdict, text, StringComparison.Ordinal);
    }

    [Fact]
    public void Spoons_say_what_they_were_taken_to_weigh_and_where_both_cost_the_same()
    {
        // break-even 1·(5.50/10)/(18/50) = 1.528 spoons, whatever a spoon weighs
        var text = Sample.Answer("compare 5,50/10g 1 tsp per 20 ml vs 18,00/50g 0,3 tsp per 20 ml")!.PlainText;

        Assert.Contains("1.53 tsp", text, StringComparison.Ordinal);
        Assert.Contains("weighs 2 g", text, StringComparison.Ordinal);
        Assert.Contains("5.1 times", text, StringComparison.Ordinal);
    }

    [Fact]
    public void Two_materials_take_usual_doses_at_the_studios_own_prices()
    {
        // blue mica 17.90 for 100 g, 10 g to 100 mL; ultramarine 15.60 for 500 mL, 20 mL to 100 mL
        var text = Sample.Answer("compare blue mica vs ultramarine")!.PlainText;

        Assert.Contains("1.79 EUR", text, StringComparison.Ordinal);
        Assert.Contains("0.62 EUR", text, StringComparison.Ordinal);
        Assert.Contains("assumed equal", text, StringComparison.Ordinal);
        Assert.Contains("Invented studio", text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("compare cup vs blue mica", "cup")]
    [InlineData("compare 12/100ml 5 g per 100ml vs 30/500ml 10 ml per 100ml", "5 g")]
    [InlineData("compare 12/100ml 5 ml per 100g vs 30/500ml 10 ml per 100ml", "100 g")]
    public void What_cannot_be_compared_is_pointed_at(string words, string at) =>
        Assert.Equal(at, Sample.Hear(words).Error!.Word);
}
