using System.Text.Json;
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

    [Fact]
    public void An_entry_is_one_line_however_many_its_words_have()
    {
        Log().LogError(new InvalidOperationException("first\nsecond"), "One\r\ntwo");
        Assert.Equal(
            "2026-11-25T09:00:00.000Z Error studio: One | two | System.InvalidOperationException: first | second"
            + Environment.NewLine,
            written.ToString());
    }

    [Fact]
    public void An_entry_of_ours_bears_its_number_and_one_of_the_framework_none()
    {
        Log("StudioBot.Host.Ticks").LogInformation(Events.BackupProven, "Proven.");
        Log("Microsoft.Hosting").LogInformation(new EventId(500), "Started.");
        Assert.Equal(
            ["2026-11-25T09:00:00.000Z Information StudioBot.Host.Ticks 500: Proven.",
             "2026-11-25T09:00:00.000Z Information Microsoft.Hosting: Started."],
            written.ToString().Split(Environment.NewLine, StringSplitOptions.RemoveEmptyEntries));
    }

    [Fact]
    public void On_request_an_entry_is_a_line_of_json()
    {
        Log("StudioBot.Host.Ticks", isJson: true).LogError(
            Events.BackupNotMade, new InvalidOperationException("no\nroom “there”"), "Not made \ud800, token {Token}.", Token);
        var line = Assert.Single(written.ToString().Split(Environment.NewLine, StringSplitOptions.RemoveEmptyEntries));
        var entry = JsonDocument.Parse(line).RootElement;
        Assert.Equal(
            ["2026-11-25T09:00:00.000Z", "Error", "StudioBot.Host.Ticks", "BackupNotMade",
             "Not made \ufffd, token 123456789:***.", "System.InvalidOperationException: no | room “there”"],
            new[] { "at", "level", "from", "name", "text", "exception" }.Select(name => entry.GetProperty(name).GetString()));
        Assert.Equal(502, entry.GetProperty("event").GetInt32());
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

    private ILogger Log(string category = "studio", bool isJson = false) =>
        new LineLog(written, new FakeTimeProvider(new DateTimeOffset(2026, 11, 25, 9, 0, 0, TimeSpan.Zero)), isJson)
            .CreateLogger(category);
}
