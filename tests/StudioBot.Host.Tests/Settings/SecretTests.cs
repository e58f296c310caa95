using StudioBot.Host.Settings;

namespace StudioBot.Host.Tests.Settings;

public sealed class SecretTests
{
    [Fact]
    public void A_token_shows_the_bot_s_number_and_nothing_else() =>
        Assert.Equal("is 123456789:***", $"is {new Secret("123456789:AbcDefGhiJklMnoPqrStuVwx")}");

    [Theory]
    [InlineData("no colon at all")]
    [InlineData("words:before it")]
    [InlineData("")]
    public void Anything_else_shows_nothing(string value) => Assert.Equal("***", new Secret(value).ToString());

    [Fact]
    public void It_is_given_to_who_asks_for_it() => Assert.Equal("1:a", new Secret("1:a").Reveal());
}
