using Microsoft.Extensions.Time.Testing;
using StudioBot.Host.Settings;
using StudioBot.Host.Verbs;

namespace StudioBot.Host.Tests.Support;

/// <summary>Runs what is typed behind <c>studiobot</c> in this process, by the road of the program itself, on a clock of its own.</summary>
internal sealed class Typist
{
    public FakeTimeProvider Clock { get; } = new(new DateTimeOffset(2026, 11, 26, 4, 20, 0, TimeSpan.Zero));

    /// <summary>What stands in the environment.</summary>
    public Dictionary<string, string> Variables { get; } = [];

    /// <summary>Where the program and its settings lie.</summary>
    public string ProgramFolder { get; init; } = AppContext.BaseDirectory;

    /// <summary>Runs it to its end, with nothing to read.</summary>
    public async Task<Ended> Type(params string[] words)
    {
        using var heard = new StringWriter { NewLine = "\n" };
        using var error = new StringWriter { NewLine = "\n" };
        var streams = new Streams(TextReader.Null, heard, error, IsInteractive: false, HasColour: false);
        var (verb, invocation) = Assert.IsType<CommandLine.Said>(CommandLine.Read(words));
        var code = await verb.Run(invocation, new Workplace(new Machine(Variables, ProgramFolder, ""), streams, Clock), CancellationToken.None);
        return new Ended((int)code, heard.ToString(), error.ToString().ReplaceLineEndings("\n"));
    }
}
