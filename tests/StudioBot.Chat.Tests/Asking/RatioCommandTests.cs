using StudioBot.Chat.Tests.Support;

namespace StudioBot.Chat.Tests.Asking;

public sealed class RatioCommandTests
{
    [Theory]
    [InlineData("ratio 3:1 250 ml", "187.5 ml", "62.5 ml")] // proportion
    [InlineData("ratio 3:1:0.5 450 ml", "300 ml", "50 ml")]
    [InlineData("ratio 100:45 by weight 300 g", "206.9 g", "93.1 g")]
    [InlineData("ratio 4:1 100 ml", "80 ml", "20 ml")] // common practice: four scoops of base to one of varnish
    public void A_total_is_split_by_the_parts(string words, string first, string last)
    {
        var said = Phone.Says(words);

        Assert.Contains(first, said, StringComparison.Ordinal);
        Assert.Contains(last, said, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("ratio 3:1 have 60 medium 25 thinner", "Add 15 ml medium", "100 ml")] // k = max(have/part)
    [InlineData("ratio 2:1 have 80 A", "Add 40 ml B", "120 ml")]
    [InlineData("ratio 100:45 by weight have 60 g A", "Add 27 g B", "87 g")]
    [InlineData("ratio 2:1 have 80 A 300 ml", "Add 120 ml A and 100 ml B", "300 ml")] // 200 + 100
    [InlineData("ratio 3:1 have 200 ml medium", "Add 66.7 ml of the other part (B)", "266.7 ml")]
    [InlineData("ratio 3:1 have 60 medium 40 thinner 80 ml", "First stir and take 50 ml out; add 30 ml medium", "80 ml")]
    [InlineData("ratio 2:1 have 50 hardener B", "Add 100 ml of the other part (A)", "150 ml")] // B, whoever is named first
    [InlineData("ratio 2:1 have 40 hardener B 100 resin A", "Add 10 ml hardener B", "150 ml")]
    [InlineData("ratio 2:1 have 120 A 60 B", "Nothing to add", "180 ml")]
    public void A_cup_gets_the_least_that_puts_it_right(string words, string add, string total)
    {
        var said = Phone.Says(words);

        Assert.StartsWith(add, said, StringComparison.Ordinal);
        Assert.Matches($@"New total\s+{total}", said);
    }

    [Fact]
    public void Parts_come_in_steps_that_a_cup_reads() => // smallest total from 250 mL up that keeps 3:1 on 5 mL
        Assert.Contains("195 + 65 = 260 ml, ratio kept", Phone.Says("ratio 3:1 250 ml"), StringComparison.Ordinal);

    [Fact]
    public void A_bare_total_is_taken_as_millilitres_and_said() =>
        Assert.Contains("Taken as ml", Phone.Says("ratio 2:1 300"), StringComparison.Ordinal);

    [Fact]
    public void A_bare_total_by_weight_is_taken_as_grams() =>
        Assert.Contains("206.9 g", Phone.Says("ratio 100:45 by weight 300"), StringComparison.Ordinal);

    [Theory]
    [InlineData("ratio 3:1 have 60 ml medium 25 g thinner", "25 g")]
    [InlineData("ratio 3:1 have 4 oz medium", "4 oz")]
    [InlineData("ratio 100:45 by weight 300 ml", "300 ml")]
    [InlineData("ratio 3:1 have 10 white 20 medium 30 thinner", "thinner")]
    public void Volume_and_mass_are_never_mixed_silently(string words, string word) => Assert.Equal(word, Phone.Blames(words));

    [Fact]
    public void One_part_under_two_names_is_no_mixture() =>
        Assert.True(Sample.Answer("ratio 2:1 have 80 A 20 resin A")!.IsTrouble);

    [Fact]
    public void Resin_comes_with_its_caution() =>
        Assert.Contains("! Mind: Gloves, Small cups.", Phone.Says("ratio 2:1 have 80 A"), StringComparison.Ordinal);

    [Theory]
    [InlineData("ratio 3:1 250 ml")]
    [InlineData("ratio 3:1 have 60 medium 25 thinner")]
    [InlineData("ratio 2:1 have 80 A")]
    [InlineData("ratio 3:1 have 60 medium 40 thinner 80 ml")]
    public void It_fits_a_phone(string words) => Phone.Fits(words);
}
