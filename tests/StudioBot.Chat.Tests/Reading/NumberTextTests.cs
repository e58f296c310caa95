using StudioBot.Chat.Reading;

namespace StudioBot.Chat.Tests.Reading;

public sealed class NumberTextTests
{
    [Theory]
    [InlineData("24.90", 24.9)]
    [InlineData("24,90", 24.9)]          // a comma is a decimal one
    [InlineData("0,125", 0.125)]         // no group of thousands begins with zero
    [InlineData("1,234.50", 1234.5)]     // unless a point shows that it groups
    [InlineData("1.234,50", 1234.5)]
    [InlineData("1,200,000", 1_200_000)]
    public void Points_and_commas_are_read_in_either_custom(string typed, double value) =>
        Assert.Equal((value, NumberFlaw.None), NumberText.Read(typed));

    [Fact]
    public void One_comma_before_three_digits_has_two_readings() =>
        Assert.Equal((1.2, NumberFlaw.TwoReadings), NumberText.Read("1,200"));

    [Theory]
    [InlineData("30..5")]
    [InlineData("1.2.3")]
    [InlineData("1,2,3.4,5")]
    public void What_no_custom_writes_is_no_number(string typed) =>
        Assert.Equal(NumberFlaw.NotANumber, NumberText.Read(typed).Flaw);

    [Theory]
    [InlineData("17,18,21", true)]
    [InlineData("1,200,000", false)]
    public void A_list_is_told_from_thousands(string typed, bool isList) =>
        Assert.Equal(isList, NumberText.IsList(typed));
}
