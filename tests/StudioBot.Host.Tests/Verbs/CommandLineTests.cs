using StudioBot.Host.Verbs;

namespace StudioBot.Host.Tests.Verbs;

public sealed class CommandLineTests
{
    [Theory]
    [InlineData("", "")]
    [InlineData("--data /srv", "")]
    [InlineData("--sample", "")]
    [InlineData("serve --data /srv", "serve")]
    [InlineData("ask ratio", "ask")]
    [InlineData("ask ratio 3:1 250 ml --json", "ask")]
    [InlineData("read --now 2026-11-25T10:00 --json", "read")]
    [InlineData("sample /srv", "sample")]
    [InlineData("import stock.csv --data /srv", "import")]
    [InlineData("rehearse evening.talk", "rehearse")]
    [InlineData("rehearse evening.talk --json", "rehearse")]
    [InlineData("config", "config")]
    [InlineData("help", "help")]
    [InlineData("--help", "help")]
    [InlineData("-h", "help")]
    [InlineData("--version", "version")]
    public void The_first_word_says_what_to_do(string line, string verb) =>
        Assert.Equal(verb, Assert.IsType<CommandLine.Said>(Read(line)).Verb.Word);

    [Fact]
    public void Options_are_taken_out_wherever_they_stand()
    {
        var said = Assert.IsType<CommandLine.Said>(Read("ask --json ratio --data /srv 3:1")).Invocation;
        Assert.Equal(["ratio", "3:1"], said.Words);
        Assert.Equal(("/srv", true), (said.Data, said.Json));
    }

    [Theory]
    [InlineData("serv", "studiobot serve [--data DIR]...")]
    [InlineData("dance", "studiobot help")]
    [InlineData("ask", "studiobot ask \"WORDS\" [--json]")]
    [InlineData("sample a b", "studiobot sample DIR")]
    [InlineData("import", "studiobot import FILE [--data DIR]")]
    [InlineData("rehearse", "studiobot rehearse FILE [--json] [--files DIR]")]
    [InlineData("serve --sample", "studiobot serve [--data DIR]...")]
    [InlineData("serve --json", "studiobot serve [--data DIR]...")]
    [InlineData("serve --data", "studiobot serve [--data DIR]...")]
    [InlineData("--tokens x", "studiobot [--sample] [--data DIR]")]
    public void What_can_t_be_read_is_answered_with_what_would_work(string line, string works) =>
        Assert.Equal(works, Assert.IsType<CommandLine.Misread>(Read(line)).Try);

    [Fact]
    public void There_is_no_option_for_the_token() =>
        Assert.DoesNotContain(
            VerbList.All.SelectMany(verb => verb.Options), option =>
                option.Contains("token", StringComparison.OrdinalIgnoreCase));

    private static CommandLine Read(string line) =>
        CommandLine.Read(line.Split(' ', StringSplitOptions.RemoveEmptyEntries));
}
