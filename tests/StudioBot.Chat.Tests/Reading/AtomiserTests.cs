using System.Globalization;
using StudioBot.Chat.Reading;
using StudioBot.Chat.Tests.Support;

namespace StudioBot.Chat.Tests.Reading;

/// <summary>Lengths come out in cm, volumes in ml, masses in g, times in s.</summary>
public sealed class AtomiserTests
{
    [Theory]
    // one unit in all its spellings
    [InlineData("250 ml", "Volume 250")]
    [InlineData("250mls", "Volume 250")]
    [InlineData("2 dl", "Volume 200")]
    [InlineData("12in", "Length 30.48")]
    [InlineData("12\"", "Length 30.48")]
    [InlineData("12 inches", "Length 30.48")]
    [InlineData("8 fl oz", "Volume 236.588")]      // 29.5735 ml, the US fluid ounce
    [InlineData("2 sq m", "Area 20000")]
    [InlineData("120 cm²", "Area 120")]
    [InlineData("60% rh", "Percent 60")]
    [InlineData("21 deg C", "Temperature 21")]
    [InlineData("21°C", "Temperature 21")]
    [InlineData("70℉", "Temperature 70")]
    [InlineData("€85,50", "Money 85.5")]
    [InlineData("85.50 €", "Money 85.5")]
    // feet and inches
    [InlineData("1' 6\"", "Length 45.72")]
    [InlineData("1ft 6in", "Length 45.72")]
    [InlineData("1'6 1/2\"", "Length 46.99")]
    // as spoken
    [InlineData("half a litre", "Volume 500")]
    [InlineData("half litre", "Volume 500")]
    [InlineData("a week", "Time 604800")]
    [InlineData("twenty five ml", "Volume 25")]
    [InlineData("twenty-five ml", "Volume 25")]
    // fractions and groups
    [InlineData("10 1/2 in", "Length 26.67")]
    [InlineData("1/2 l", "Volume 500")]
    [InlineData("1 000 ml", "Volume 1000")]
    [InlineData("1,200 ml", "Volume 1200")]        // nobody pours 1.2 ml
    [InlineData("1,200 l", "Volume 1200")]         // nor 1200 litres
    public void A_number_and_its_unit_are_one_quantity(string typed, string quantity)
    {
        var atom = Assert.Single(Join(typed));
        Assert.Equal(AtomKind.Quantity, atom.Kind);
        var value = atom.Value.ToString("0.###", CultureInfo.InvariantCulture);
        Assert.Equal(quantity, $"{atom.Unit!.Measure} {value}");
    }

    [Theory]
    [InlineData("3:1", "3:1")]
    [InlineData("100:45:5", "100:45:5")]
    [InlineData("3 to 1", "3:1")]
    public void Numbers_that_stand_to_each_other_are_a_ratio(string typed, string parts)
    {
        var atom = Assert.Single(Join(typed));
        Assert.Equal(AtomKind.Ratio, atom.Kind);
        Assert.Equal(parts, string.Join(':', atom.Parts));
    }

    [Theory]
    [InlineData("20 to 30 ml", "Number Word Quantity")]     // a span, no ratio
    [InlineData("200 in ml", "Number Word Word")]           // no inches
    [InlineData("5.50/10g", "Number Mark Quantity")]        // a price for a pack
    [InlineData("2/1", "Fraction")]
    [InlineData("6 colours", "Number Word")]
    [InlineData("a dozen coasters", "Number Word")]
    [InlineData("the big one", "Word Word Word")]           // one is no number here
    [InlineData("one coat", "Number Word")]
    [InlineData("20 ml lamp black", "Quantity Name")]
    [InlineData("lamp black mica", "Name Word")]            // the longest name that fits
    [InlineData("#17", "Number")]
    public void What_belongs_together_is_joined_and_the_rest_is_not(string typed, string kinds) =>
        Assert.Equal(kinds, string.Join(' ', Join(typed).Select(atom => atom.Kind)));

    private static List<Atom> Join(string typed) => Atomiser.Join(Characters.Plain(typed), Sample.Studio.Words);
}
