namespace StudioBot.Host.Verbs;

/// <summary>Reads the command line.</summary>
internal abstract record CommandLine
{
    private const string Data = "--data";
    private const string Now = "--now";
    private const string Json = "--json";
    private const string Sample = "--sample";
    private const string Files = "--files";

    private CommandLine()
    {
    }

    /// <summary>It says what to do.</summary>
    public sealed record Said(Verb Verb, Invocation Invocation) : CommandLine;

    /// <summary>It can't be read.</summary>
    /// <param name="Why">In one line.</param>
    /// <param name="Try">A command line that would work.</param>
    public sealed record Misread(string Why, string Try) : CommandLine;

    /// <summary>Reads the arguments.</summary>
    public static CommandLine Read(IReadOnlyList<string> arguments)
    {
        var first = arguments.Count > 0 ? arguments[0] : "";
        var word = first switch
        {
            "--help" or "-h" => "help",
            "--version" => "version",
            _ when first.StartsWith('-') => "",
            _ => first,
        };
        return VerbList.All.FirstOrDefault(verb => verb.Word == word) is { } verb
            ? Read(verb, [.. arguments.Skip(word.Length > 0 ? 1 : 0)])
            : new Misread($"“{word}” is nothing the program does.", Nearest(word));
    }

    private static CommandLine Read(Verb verb, IReadOnlyList<string> rest)
    {
        var said = new Invocation();
        var words = new List<string>();
        for (var at = 0; at < rest.Count; at++)
        {
            var argument = rest[at];
            if (!argument.StartsWith("--", StringComparison.Ordinal) || argument == "--")
            {
                words.Add(argument);
                continue;
            }

            if (argument != Data && !verb.Options.Contains(argument))
            {
                return new Misread($"“{argument}” is no option here.", Shown(verb));
            }

            if (argument == Json)
            {
                said = said with { Json = true };
                continue;
            }

            if (argument == Sample)
            {
                said = said with { Sample = true };
                continue;
            }

            if (++at == rest.Count)
            {
                return new Misread($"“{argument}” wants a value behind it.", Shown(verb));
            }

            if (argument == Data && said.DataFolders.Count > 0 && !verb.TakesSeveralFolders)
            {
                return new Misread($"“{Data}” stands here once.", Shown(verb));
            }

            said = argument switch
            {
                Data => said with { DataFolders = [.. said.DataFolders, rest[at]] },
                Files => said with { Files = rest[at] },
                _ => said with { Now = rest[at] },
            };
        }

        return words.Count < verb.Takes.Fewest ? new Misread($"“{verb.Word}” wants more behind it.", Shown(verb))
            : words.Count > verb.Takes.Most ? new Misread($"“{words[verb.Takes.Most]}” is too much here.", Shown(verb))
            : new Said(verb, said with { Words = words });
    }

    private static string Shown(Verb verb) => $"studiobot {verb.Usage}".TrimEnd();

    private static string Nearest(string word)
    {
        var near = VerbList.All.FirstOrDefault(verb =>
            verb.Word.Length > 0 && word.Length > 1 && verb.Word.StartsWith(word[..2], StringComparison.Ordinal));
        return near is null ? "studiobot help" : Shown(near);
    }
}
