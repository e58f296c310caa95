using StudioBot.Chat.Tests.Support;

namespace StudioBot.Chat.Tests;

/// <summary>What is answered to a message that can't be read, word for word: the word, why, a message that works.</summary>
public sealed class HowReadTests
{
    [Theory]
    // a question
    [InlineData("ratio 3;1 250 ml", "“3;1” is not a ratio: parts are split by a colon.", "ratio 3:1 250 ml")]
    [InlineData("ratio 3:0 250 ml", "“3:0” has a part of nothing: each is above zero.", "ratio 3:1 250 ml")]
    [InlineData("ratio 3:1 -250 ml", "“-250 ml” can't be negative.", "ratio 3:1 250 ml")]
    [InlineData("amounts 30..5cm panel", "“30..5cm” is not a number.", "amounts 30cm panel bloom 6 colours")]
    [InlineData("amounts 400cm panel", "“400cm” is too large: sizes go from 1 to 300 cm.", "amounts 30cm panel bloom 6 colours")]
    // a record says that nothing was recorded
    [InlineData("used 20 white", "“20” has no unit: ml or g? Nothing recorded.", "used 20 ml white")]
    [InlineData("used 20 zorks white", "“zorks” is no unit: ml or g? Nothing recorded.", "used 20 ml white")]
    [InlineData("used 20 ml", "“20 ml” is of what? The material is missing. Nothing recorded.", "used 20 ml white")]
    [InlineData("used 20 ml zorks", "“zorks” is no material of this studio. Nothing recorded.", "used 20 ml white")]
    [InlineData("used a bit white", "“a bit” is no amount. Nothing recorded.", "used 20 ml white")]
    [InlineData("sand 999", "“999” is no piece here: there is none of that number. Nothing recorded.", "sand 18")]
    [InlineData("sand", "A piece's number is missing. Nothing recorded.", "sand 18")]
    [InlineData("due 17 31 feb", "“31 feb” is no day of the calendar. Nothing recorded.", "due 21 28 june 320 for a customer")]
    [InlineData("room 60C 55%", "“60C” is no temperature of a studio: are the two swapped? Nothing recorded.", "room 20C 58%")]
    [InlineData("role Pia king", "“king” is no role: roles are member and steward here. Nothing recorded.", "role Pia steward")]
    // nothing of the language
    [InlineData("xyzzy", "“xyzzy” begins nothing that is known here.", "help")]
    public void A_slip_is_explained_in_three_short_lines(string typed, string why, string example) =>
        Assert.Equal($"{why}\nTry\n  {example}", Sample.Answer(typed)!.PlainText.ReplaceLineEndings("\n"));

    [Fact]
    public void A_doubtful_record_shows_what_its_button_would_record() =>
        Assert.Equal(
            "Nothing recorded yet.\n“usde” is no command; used is the nearest.\nMeant like this?\n  used 20 ml white",
            Sample.Answer("usde 20 ml white")!.PlainText.ReplaceLineEndings("\n"));
}
