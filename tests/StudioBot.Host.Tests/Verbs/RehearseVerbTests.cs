using System.Text.Json;
using SkiaSharp;
using StudioBot.Host.Settings;
using StudioBot.Host.Tests.Support;
using StudioBot.Host.Verbs;

namespace StudioBot.Host.Tests.Verbs;

public sealed class RehearseVerbTests
{
    [Fact]
    public void A_talk_that_holds_ends_with_zero()
    {
        var (code, _, error) = Played(asJson: false, "pia: room 20C 58%", "> 20 °C");
        Assert.Equal((0, ""), (code, error));
    }

    [Fact]
    public void A_failing_expectation_ends_with_one_and_names_its_line()
    {
        var (code, _, error) = Played(asJson: false, "# evening", "pia: room 20C 58%", "> snow");
        Assert.Equal(1, code);
        Assert.StartsWith("line 3: expected “snow”", error, StringComparison.Ordinal);
    }

    [Fact]
    public void A_line_that_can_t_be_read_ends_with_one_and_is_named()
    {
        var (code, _, error) = Played(asJson: false, "pia: help", "dance");
        Assert.Equal(1, code);
        Assert.StartsWith("line 2: “dance”", error, StringComparison.Ordinal);
    }

    [Fact]
    public void For_programs_each_message_of_the_bot_is_one_line_of_JSON()
    {
        var (_, heard, _) = Played(
            asJson: true, "zone Europe/Vienna", "at 2026-03-02 18:00", "pia: room 20C 58%", "pia@group: /room 21C 50%");
        var lines = heard.Trim().Split('\n').Select(line => JsonDocument.Parse(line).RootElement).ToList();
        Assert.Equal(["pia", "group"], lines.Select(line => line.GetProperty("to").GetString()));
        Assert.All(lines, line =>
        {
            Assert.Equal(
                ["at", "to", "kind", "text", "buttons", "picture", "file"], line.EnumerateObject().Select(part => part.Name));
            Assert.Equal("2026-03-02 18:00", line.GetProperty("at").GetString());
            Assert.Equal("reply", line.GetProperty("kind").GetString());
            Assert.Equal("Undo", line.GetProperty("buttons")[0].GetString());
            Assert.Equal(JsonValueKind.Null, line.GetProperty("picture").ValueKind);
        });
        Assert.StartsWith("Studio: 20 °C, 58 %.", lines[0].GetProperty("text").GetString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Pictures_are_kept_in_the_folder_that_is_named_in_the_order_they_came()
    {
        using var folder = new TempFolder();
        var pictures = Path.Combine(folder.Path, "pictures");
        var (code, heard, _) = Played(
            new Invocation { Files = pictures },
            "at 2026-03-02 18:00", "pia: pour 30cm panel bloom 3 colours", "+ 3 days", "pia: piece 1", "+ 1 day", "pia: piece 1");
        Assert.Equal(0, code);
        var kept = Directory.GetFiles(pictures).Order(StringComparer.Ordinal).ToList();
        Assert.Equal("001-piece-1.png", Path.GetFileName(kept[0]));
        Assert.All(kept, path => Assert.Contains($"(picture: {path})", heard, StringComparison.Ordinal));
        using var first = SKBitmap.Decode(kept[0]);
        Assert.Equal(1280, first.Width);
    }

    [Fact]
    public void Without_a_folder_a_picture_is_named_alone()
    {
        var (_, heard, _) = Played(
            new Invocation { Json = true },
            "at 2026-03-02 18:00", "pia: pour 30cm panel bloom 3 colours", "+ 3 days", "pia: piece 1");
        Assert.Contains("\"picture\":\"piece-1.png\"", heard, StringComparison.Ordinal);
    }

    private static (int Code, string Out, string Error) Played(bool asJson, params string[] lines) =>
        Played(new Invocation { Json = asJson }, lines);

    private static (int Code, string Out, string Error) Played(Invocation said, params string[] lines)
    {
        using var heard = new StringWriter { NewLine = "\n" };
        using var error = new StringWriter { NewLine = "\n" };
        var streams = new Streams(TextReader.Null, heard, error, IsInteractive: false, HasColour: false);
        var machine = new Machine(new Dictionary<string, string>(), AppContext.BaseDirectory, "");
        var code = RehearseVerb.Play(lines, Studios.Practice, said, new Workplace(machine, streams, TimeProvider.System));
        return ((int)code, heard.ToString(), error.ToString());
    }
}
