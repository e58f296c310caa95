using StudioBot.Chat.Replies;
using StudioBot.Host.Terminal;

namespace StudioBot.Host.Tests.Terminal;

public sealed class TerminalPageTests
{
    private static readonly Reply Full = new(
        [
            new Block.Headline("250 mL"),
            new Block.Figures([new("A", "187.5 mL"), new("B", "62.5 mL")]),
            new Block.Sample("ratio 3:1 250 ml"),
            new Block.Caution("gloves"),
        ],
        [new Button("Log it", "x"), new Button("Add resin", "y")]);

    [Fact]
    public void A_pipe_gets_words_alone() => Assert.Equal(
        ["250 mL", "A  187.5 mL", "B   62.5 mL", "  ratio 3:1 250 ml", "! gloves", "[a] Log it  [b] Add resin"],
        Written(Full, hasColour: false));

    [Fact]
    public void A_terminal_gets_colour_that_ends_with_its_line()
    {
        var lines = Written(Full, hasColour: true);
        Assert.Equal("\e[1m250 mL\e[0m", lines[0]);
        Assert.All(lines.Where(line => line.Contains('\e', StringComparison.Ordinal)), line =>
            Assert.EndsWith("\e[0m", line, StringComparison.Ordinal));
    }

    [Fact]
    public void What_was_typed_gives_the_terminal_no_orders()
    {
        var lines = Written(new Reply(new Block.Line("“\e]0;title\a\e[2J” is no ratio\r")), hasColour: false);
        Assert.DoesNotContain(lines.Single(), letter => char.IsControl(letter));
    }

    [Fact]
    public void Many_buttons_go_on_in_the_next_row()
    {
        var buttons = Enumerable.Range(0, 6).Select(number => new Button($"A rather long one {number}", "x")).ToList();
        var lines = Written(new Reply([new Block.Line("x")], buttons), hasColour: false).Skip(1).ToList();
        Assert.True(lines.Count > 1);
        Assert.All(lines, line => Assert.InRange(line.Length, 1, 78));
        Assert.Contains("[f]", lines[^1], StringComparison.Ordinal);
    }

    private static List<string> Written(Reply reply, bool hasColour)
    {
        using var writer = new StringWriter { NewLine = "\n" };
        new TerminalPage(writer, hasColour).Write(reply);
        return [.. writer.ToString().TrimEnd('\n').Split('\n')];
    }
}
