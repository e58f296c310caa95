using StudioBot.Chat.Reading;

namespace StudioBot.Chat.Tests.Reading;

public sealed class LexerTests
{
    [Theory]
    [InlineData("250ml", "250|ml")]
    [InlineData("30x40cm", "30|x|40|cm")]
    [InlineData("30cmx40cm", "30|cm|x|40|cm")]
    [InlineData("that's white", "thats|white")]
    [InlineData("lot H-12", "lot|h-12")]
    [InlineData("17-18", "17|-|18")]
    [InlineData("3;1", "3|;|1")]
    public void A_message_falls_apart_where_people_see_it_fall_apart(string typed, string parts) =>
        Assert.Equal(parts, string.Join('|', Lexer.Cut(typed).Select(token => token.Lower)));

    [Theory]
    [InlineData("17,18,21", "17|18|21")]   // a list, which groups no thousands
    [InlineData("1,200,000", "1200000")]
    public void Commas_between_numbers_part_a_list(string typed, string numbers) =>
        Assert.Equal(numbers, string.Join('|', Numbers(typed).Select(token => token.Value)));

    [Theory]
    [InlineData("2½", 2.5)]
    [InlineData("½", 0.5)]
    [InlineData("-5", -5)]
    [InlineData(".5", 0.5)]
    [InlineData("1e3", 1000)]
    public void A_number_has_its_value(string typed, double value) =>
        Assert.Equal(value, Numbers(typed).Single().Value);

    [Theory]
    [InlineData("30..5", nameof(NumberFlaw.NotANumber))]
    [InlineData("nan", nameof(NumberFlaw.NotANumber))]
    [InlineData("٢٠", nameof(NumberFlaw.ForeignDigits))]
    [InlineData("2\u200b0", nameof(NumberFlaw.Invisible))]
    [InlineData("1e309", nameof(NumberFlaw.Absurd))]
    [InlineData("9999999999999999999999", nameof(NumberFlaw.Absurd))]
    [InlineData("1,200", nameof(NumberFlaw.TwoReadings))]
    [InlineData("1,20", nameof(NumberFlaw.None))]
    public void What_is_odd_about_a_number_is_kept_with_it(string typed, string flaw) =>
        Assert.Equal(flaw, Numbers(typed).Single().Flaw.ToString());

    [Fact]
    public void A_token_knows_where_it_stood() =>
        Assert.Equal([(0, 4), (5, 7), (8, 10)], Lexer.Cut("used 20 ml").Select(token => (token.Start, token.End)));

    private static IEnumerable<Token> Numbers(string typed) =>
        Lexer.Cut(typed).Where(token => token.Kind == TokenKind.Number);
}
