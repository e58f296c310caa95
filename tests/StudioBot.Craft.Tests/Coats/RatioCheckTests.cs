using CsCheck;
using StudioBot.Craft.Coats;
using StudioBot.Craft.Units;

namespace StudioBot.Craft.Tests.Coats;

/// <summary>2 and 5 %: common practice.</summary>
public sealed class RatioCheckTests
{
    [Theory]
    [InlineData(50, RatioVerdict.Fine)]
    [InlineData(51, RatioVerdict.Fine)]         // 2 % over
    [InlineData(48, RatioVerdict.Caution)]      // 4 % short
    [InlineData(52.5, RatioVerdict.Caution)]    // 5 % over
    [InlineData(47, RatioVerdict.DoNotPour)]
    [InlineData(60, RatioVerdict.DoNotPour)]    // more hardener never means faster
    [InlineData(0, RatioVerdict.DoNotPour)]
    public void Off_ratio_is_judged(double b, RatioVerdict verdict) =>
        Assert.Equal(verdict, RatioCheck.Of(
            Kits.Ordinary, Volume.FromMillilitres(100), Volume.FromMillilitres(b)).Verdict);

    [Fact]
    public void What_it_says_to_add_puts_it_right() =>
        Gen.Select(Gen.Double[1, 500], Gen.Double[0, 500]).Sample((a, b) =>
        {
            var check = RatioCheck.Of(Kits.Ordinary, Mass.FromGrams(a), Mass.FromGrams(b));
            var mended = RatioCheck.Of(
                Kits.Ordinary, Mass.FromGrams(a) + check.AddA, Mass.FromGrams(b) + check.AddB);
            return Math.Abs(mended.Off) < 1e-9;
        });

    [Fact]
    public void Without_part_A_there_is_no_mix() => Assert.Throws<ArgumentOutOfRangeException>(
        () => RatioCheck.Of(Kits.Ordinary, default(Mass), Mass.FromGrams(50)));
}
