using Microsoft.Extensions.Logging;
using Microsoft.Extensions.Time.Testing;
using StudioBot.Host.Logging;

namespace StudioBot.Host.Tests.Logging;

public sealed class LineLogTests : IDisposable
{
    private const string Token = "123456789:TestOnlyTestOnlyTestOnlyTestOnly123";

    private readonly StringWriter written = new();

    [Fact]
    public void An_entry_says_when_how_grave_from_where_and_what()
    {
        Log().LogWarning("It took {Seconds} s.", 3);
        Assert.Equal(
            "2026-11-25T09:00:00.000Z Warning studio: It took 3 s." + Environment.NewLine, written.ToString());
    }

    [Theory]
    [InlineData("POST http://127.0.0.1:8081/bot" + Token + "/getMe")]
    [InlineData(Token)]
    [InlineData("escaped: bot123456789%3ATestOnlyTestOnlyTestOnlyTestOnly123/getMe")]
    public void No_token_gets_through_in_words_or_in_an_exception(string text)
    {
        Log().LogError(new InvalidOperationException(text), "{Text}", text);
        Assert.Contains("123456789:***", written.ToString(), StringComparison.Ordinal);
        Assert.DoesNotContain("TestOnly", written.ToString(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("ratio 3:1 250 ml")]
    [InlineData("at 09:00:00 in chat 123456789")]
    public void What_is_no_token_is_left_alone(string text) => Assert.Equal(text, Redaction.Of(text));

    public void Dispose() => written.Dispose();

    private ILogger Log() =>
        new LineLog(written, new FakeTimeProvider(new DateTimeOffset(2026, 11, 25, 9, 0, 0, TimeSpan.Zero)))
            .CreateLogger("studio");
}
