using System.Globalization;
using System.Text.RegularExpressions;

namespace StudioBot.Chat.Tests.Whole;

/// <summary>One message with its meaning, from messages.tsv.</summary>
internal sealed partial record MessageRow(
    string Id, ChatKind Chat, string Kind, string Text, string Command, string Understood, string Note)
{
    public static IReadOnlyList<MessageRow> All { get; } =
        [.. File.ReadAllLines(Path.Combine(AppContext.BaseDirectory, "Whole", "messages.tsv")).Skip(1).Select(Read)];

    /// <summary>What the reader should say it is.</summary>
    public string ExpectedKind =>
        Kind == "write" && Note.StartsWith("confirm:", StringComparison.Ordinal) ? "confirm" : Kind;

    /// <summary>The meanings under each command word.</summary>
    public IEnumerable<(string Command, string Key, string Value)> Meanings()
    {
        var parts = Command.Contains('+', StringComparison.Ordinal)
            ? Understood.Split("||")
                .Select(part => part.Split(':', 2))
                .Select(part => (Command: part[0].Trim(), Pairs: part[1].Trim()))
            : [(Command, Pairs: Understood)];
        foreach (var (command, pairs) in parts)
        {
            foreach (var pair in pairs.Split(';', StringSplitOptions.RemoveEmptyEntries))
            {
                var equals = pair.IndexOf('=', StringComparison.Ordinal);
                yield return (command, pair[..equals].Trim(), pair[(equals + 1)..].Trim());
            }
        }
    }

    private static MessageRow Read(string line)
    {
        var cells = line.Split('\t');
        return new MessageRow(
            Id: cells[0],
            Chat: cells[1] == "group" ? ChatKind.Group : ChatKind.Private,
            Kind: cells[2],
            Text: Unescaped(cells[3]),
            Command: cells[4],
            Understood: cells.ElementAtOrDefault(5) ?? "",
            Note: cells.ElementAtOrDefault(6) ?? "");
    }

    private static string Unescaped(string text) => Escape().Replace(text, match => match.Value switch
    {
        "\\n" => "\n",
        "\\\\" => "\\",
        _ => ((char)int.Parse(match.Value[2..], NumberStyles.HexNumber, CultureInfo.InvariantCulture)).ToString(),
    });

    [GeneratedRegex(@"\\u[0-9a-fA-F]{4}|\\n|\\\\")]
    private static partial Regex Escape();
}
