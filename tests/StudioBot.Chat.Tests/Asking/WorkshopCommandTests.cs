using StudioBot.Chat.Tests.Support;

namespace StudioBot.Chat.Tests.Asking;

public sealed class WorkshopCommandTests
{
    [Theory]
    // bloom on two 10 cm tiles: 20 cm³ a mm, 2.5 mm and twice 20 % run-off, 70 mL; seven cups keep 3 mL each: 91 mL,
    // for eight 728 mL
    [InlineData(@"Mix 760 ml")]
    [InlineData(@"8 people, each +95 ml")]
    [InlineData(@"Cups, own each +8 x 7")]
    [InlineData(@"8 times 2 panels 10 × 10 cm = 1600 cm²")]
    [InlineData(@"Taken: bloom")]
    [InlineData(@"To buy: nothing")]            // 26 tiles, 88 cups, 950 mL of medium and 1700 mL of wall paint are here
    public void A_workshop_is_reckoned_each_and_all(string pattern) =>
        Assert.Matches(pattern, Sample.Answer("workshop 8 people 2 tiles 10cm 5 colours")!.PlainText);

    [Fact]
    public void Its_day_is_read_back() =>
        Assert.Contains("Sat 28 Nov 10:00", Sample.Answer("workshop sat 10:00 8 people 2 tiles 10cm 5 colours")!.PlainText, StringComparison.Ordinal);

    [Fact]
    public void What_the_shelf_lacks_is_bought_in_packs()
    {
        // 40 tiles, 26 here: 14 more, of which the cheapest pack is 20 at 19.00
        var text = Sample.Answer("workshop 20 people 2 tiles 10cm 3 colours shopping")!.PlainText;

        Assert.Matches(@"tile 10cm +1 x 20", text);
        Assert.Matches(@"cup +\d", text);
    }

    [Fact]
    public void Resin_by_ratio_and_film_comes_with_its_cautions()
    {
        // 7200 cm² at 2 mm are 1440 mL, a tenth more runs off: 1584 mL, 1056 and 528
        var text = Sample.Answer("workshop 8 pers. 30x30 cm, 5 col, 2:1 resin 2mm")!.PlainText;

        Assert.Contains("1060 ml + 530 ml", text, StringComparison.Ordinal);
        Assert.Contains("Gloves", text, StringComparison.Ordinal);
        Assert.DoesNotContain("02:01", text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("workshop 8 people 30cm panel 2:1 12mm", "12mm")]       // over 10 mm it is a cast (common practice)
    [InlineData("workshop 8 people 30cm panel 2:1:1", "2:1:1")]
    public void What_is_no_coat_is_pointed_at(string words, string at) => Assert.Equal(at, Sample.Hear(words).Error!.Word);
}
