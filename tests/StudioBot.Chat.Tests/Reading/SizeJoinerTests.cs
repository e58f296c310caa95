using StudioBot.Chat.Reading;
using StudioBot.Chat.Tests.Support;

namespace StudioBot.Chat.Tests.Reading;

public sealed class SizeJoinerTests
{
    [Theory]
    [InlineData("30x40cm", "30x40")]
    [InlineData("30 x 40 cm", "30x40")]
    [InlineData("30 by 40 cm", "30x40")]
    [InlineData("30cmx40cm", "30x40")]
    [InlineData("300mm x 40cm", "30x40")]
    [InlineData("12\"x16\"", "30.48x40.64")]
    public void Two_lengths_around_an_x_are_a_rectangle(string typed, string sizes)
    {
        var atom = Assert.Single(Join(typed));
        Assert.Equal(AtomKind.Sizes, atom.Kind);
        Assert.Equal(sizes, string.Join('x', atom.Parts.Select(part => Math.Round(part, 2))));
    }

    [Theory]
    [InlineData("6 x 10cm tile")]      // the blanks keep the count apart
    [InlineData("2x30cm panels")]      // several panels of one size
    [InlineData("2 x 1 L medium")]     // packs
    public void A_count_before_an_x_stays_a_count(string typed) =>
        Assert.DoesNotContain(Join(typed), atom => atom.Kind == AtomKind.Sizes);

    private static List<Atom> Join(string typed) => Atomiser.Join(Characters.Plain(typed), Sample.Studio.Words);
}
