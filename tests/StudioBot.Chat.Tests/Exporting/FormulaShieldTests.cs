using CsCheck;
using StudioBot.Chat.Exporting;

namespace StudioBot.Chat.Tests.Exporting;

/// <summary>The signs are those that the usual guidance on formula injection names, with their look-alikes.</summary>
public sealed class FormulaShieldTests
{
    private const string Signs = "=+-@\t\r＝＋－＠";

    // Words of signs, blanks of every kind, ends of lines, and letters: most of them hostile.
    private static readonly Gen<string> Hostile =
        Gen.Char["=+-@＝＋－＠'\t\r\n \u00A0\u200B\uFEFF\u202E\",;ab1"].Array[0, 12].Select(letters => new string(letters));

    [Theory]
    [InlineData("=1+1", "'=1+1")]
    [InlineData("+43 1 234", "'+43 1 234")]
    [InlineData("-5", "'-5")]
    [InlineData("@home", "'@home")]
    [InlineData("\t=1", "'\t=1")]
    [InlineData("\r=1", "'\r'=1")]
    [InlineData("  =1", "'  =1")]
    [InlineData("\u00A0=1", "'\u00A0=1")]
    [InlineData("\u200B\uFEFF=1", "'\u200B\uFEFF=1")]
    [InlineData("＝1", "'＝1")]
    [InlineData("－1", "'－1")]
    [InlineData("big cells\n=1+1", "big cells\n'=1+1")]
    [InlineData("big cells\r\n=1+1\r\n@x", "big cells\r\n'=1+1\r\n'@x")]
    [InlineData("'=1", "''=1")]         // so that it comes back as it was
    // As they are.
    [InlineData("white", "white")]
    [InlineData("3 = 3", "3 = 3")]
    [InlineData("'quoted'", "'quoted'")]
    [InlineData("", "")]
    public void A_line_that_begins_like_a_formula_gets_an_apostrophe(string words, string shielded) =>
        Assert.Equal(shielded, FormulaShield.Put(words));

    [Fact]
    public void Taken_off_again_the_words_are_what_they_were() =>
        Hostile.Sample(words => Assert.Equal(words, FormulaShield.Take(FormulaShield.Put(words))));

    [Fact]
    public void No_line_is_left_that_begins_like_a_formula() =>
        Hostile.Sample(words => Assert.All(
            FormulaShield.Put(words).Split(["\r\n", "\n", "\r"], StringSplitOptions.None),
            line => Assert.DoesNotContain(line.TrimStart(' ', '\u00A0', '\u200B', '\uFEFF', '\u202E').Take(1), Signs.Contains)));
}
