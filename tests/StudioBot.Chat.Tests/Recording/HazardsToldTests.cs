using StudioBot.Chat.Replies;
using StudioBot.Chat.Tests.Support;

namespace StudioBot.Chat.Tests.Recording;

/// <summary>What is known to go wrong is told where it is mixed and poured. Limits of common practice: A and B within 2 % of the ratio are fine,
/// to 5 % call for care, beyond it don't pour; water up to three tenths of a paint.</summary>
public sealed class HazardsToldTests : IDisposable
{
    private readonly LiveStudio studio = LiveStudio.Sample();

    public void Dispose() => studio.Dispose();

    [Theory]
    [InlineData("60 ml medium 3 g blue mica 3 g gold mica", "! All mica tends to sink: add one tube colour.")]
    [InlineData("60 ml medium 60 ml ceiling paint", "! Ceiling paint dries chalky and cracks; low-sheen wall paint holds.")]
    [InlineData("60 ml medium 40 ml water", "! Water is 40 %: over 30 % it may crack. Thin with medium.")]
    [InlineData("120 ml resin A 50 ml hardener B", "! B is 17 % short for 2:1 by volume: don't pour. It stays soft or sticky, and uncured")] // 50 for 60
    [InlineData("120 ml resin A 58 ml hardener B", "% short for 2:1 by volume: put it right while it is fresh. The product")]     // 58 for 60
    public void A_mix_says_the_gravest_that_is_known_against_it(string parts, string told)
    {
        Make("reef", parts);

        Assert.Contains(told, studio.Tells("mix reef 100 ml"), StringComparison.Ordinal);
        Assert.Contains(told[2..14], studio.Hear("recipe reef"), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("60 ml medium 3 g blue mica 3 g gold mica 10 ml white")]
    [InlineData("60 ml medium 3 g blue mica")]
    [InlineData("75 ml medium 25 ml water")]
    [InlineData("120 ml resin A 60 ml hardener B")]
    [InlineData("50 ml resin A 50 ml hardener B")]      // the ratios of other resins that are known: 1:1,
    [InlineData("120 ml resin A 62 ml hardener B")]     // and 100:45 by weight, 120 · 1.13 · 0.45 / 0.98 = 62.3
    public void Nothing_is_said_where_nothing_is_known_against_it(string parts)
    {
        Make("reef", parts);

        Assert.DoesNotContain("\n! ", studio.Tells("mix reef 100 ml"), StringComparison.Ordinal);
    }

    [Fact]
    public void Off_ratio_resin_comes_before_powders_that_sink()
    {
        Make("reef", "120 ml resin A 50 ml hardener B 3 g blue mica 3 g gold mica");

        var said = studio.Tells("mix reef 100 ml");

        Assert.Contains("B is 17 % short", said, StringComparison.Ordinal);
        Assert.DoesNotContain("mica tends", said, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("pour 30cm panel bloom gold mica, blue mica batch 12", true)]
    [InlineData("pour 30cm panel bloom gold mica, blue mica, white batch 12", false)]
    [InlineData("pour 30cm panel bloom 6 colours gold mica, blue mica batch 12", false)]     // four may be tube colours
    [InlineData("pour 30cm panel bloom batch 12", false)]
    public void A_pour_of_powders_alone_is_told_so(string words, bool isTold)
    {
        var reply = studio.Say(words).Reply;

        Assert.Equal(isTold, reply.PlainText.Contains("! All mica tends to sink: add one tube colour.", StringComparison.Ordinal));
        Assert.InRange(LineBudget.Of(reply), 1, LineBudget.Lines);
    }

    [Fact]
    public void A_pour_from_a_recipe_or_a_batch_of_it_is_told_what_is_against_that()
    {
        Make("reef", "60 ml medium 60 ml ceiling paint");
        var mixed = studio.Tells("mix reef 100 ml");

        Assert.StartsWith("Batch 14", mixed, StringComparison.Ordinal);
        Assert.Contains("dries chalky", studio.Tells("pour 20cm panel bloom reef"), StringComparison.Ordinal);
        Assert.Contains("dries chalky", studio.Tells("pour 20cm panel swipe batch 14"), StringComparison.Ordinal);
    }

    [Fact]
    public void A_coat_far_off_its_ratio_says_before_it_is_recorded_what_uncured_resin_does()
    {
        var asked = studio.Say("coat 14 120 A 50 B");

        Assert.False(asked.Recorded);
        Assert.Contains("Uncured resin harms skin: gloves; the product's sheet first.", asked.Reply.PlainText, StringComparison.Ordinal);
        Assert.InRange(LineBudget.Of(asked.Reply), 1, LineBudget.Lines);
    }

    private void Make(string name, string parts)
    {
        foreach (var missing in new[] { "ceiling paint", "water" }.Where(one => parts.Contains(one, StringComparison.Ordinal)))
        {
            studio.Tells($"material new {missing} 1 L");
            studio.Tells($"bought 1 l {missing} 9.90");
        }

        studio.Tells($"recipe {name} {parts}");
    }
}
