using System.Text;
using StudioBot.Chat.Replies;
using StudioBot.Host.Sending;

namespace StudioBot.Host.Telegram;

/// <summary>Writes a reply in the service's markup: the only place that may, and it escapes what it is given.</summary>
internal static class ReplyMarkup
{
    /// <summary>The most the service takes, counted after its markup is read.</summary>
    public const int Longest = 4096;

    /// <summary>The most it takes as the caption of a file, counted likewise.</summary>
    public const int LongestCaption = 1024;

    // A message of nothing but blanks is refused; silence is no answer.
    private const string Nothing = "–";

    private const string RepeatNote = "\n(You may have this twice: the line broke while it was sent.)";

    private enum Look
    {
        Plain,
        Strong,
        Fixed,
        Copied,
    }

    /// <summary>The reply as one message, or as several where it is longer than the service takes.</summary>
    public static IReadOnlyList<(string Html, string Plain)> Parts(Reply reply)
    {
        var parts = Packed(reply.Blocks.SelectMany(LinesOf).SelectMany(Cut))
            .Where(part => part.Any(line => !string.IsNullOrWhiteSpace(line.Text)))
            .Select(part => (Html(part), Plain(part)))
            .ToList();
        return parts.Count > 0 ? parts : [(Nothing, Nothing)];
    }

    /// <summary>The same message, saying that it may have come before; unchanged where it is too long to say
    /// so.</summary>
    public static Letter MaybeRepeated(Letter letter) =>
        letter.Plain.Length + RepeatNote.Length > (letter.File is null ? Longest : LongestCaption)
        ? letter
        : letter with { Html = letter.Html + RepeatNote, Plain = letter.Plain + RepeatNote };

    private static IEnumerable<Piece> LinesOf(Block block) => block switch
    {
        Block.Headline headline => Split(headline.Text, Look.Strong),
        Block.Line line => Split(line.Text, Look.Plain),
        Block.Figures figures => FigureTable.Lines(figures.Rows).SelectMany(row => Split(row, Look.Fixed)),
        Block.Sample sample => Split(sample.Text, Look.Copied),
        Block.Caution caution => Split("⚠ " + caution.Text, Look.Plain),
        _ => throw new ArgumentOutOfRangeException(nameof(block), block, "A block without a look."),
    };

    private static IEnumerable<Piece> Split(string text, Look look) =>
        text.Split('\n').Select(line => new Piece(line.TrimEnd('\r'), look));

    // A line that alone is too long ends at a blank where there is one, and never within one character's two halves.
    private static IEnumerable<Piece> Cut(Piece line)
    {
        var rest = line.Text;
        while (rest.Length > Longest)
        {
            var blank = rest.LastIndexOf(' ', Longest - 1);
            var end = blank > 0 ? blank : char.IsHighSurrogate(rest[Longest - 1]) ? Longest - 1 : Longest;
            yield return line with { Text = rest[..end] };
            rest = blank > 0 ? rest[(end + 1)..] : rest[end..];
        }

        yield return line with { Text = rest };
    }

    private static IEnumerable<IReadOnlyList<Piece>> Packed(IEnumerable<Piece> lines)
    {
        var part = new List<Piece>();
        var length = 0;
        foreach (var line in lines)
        {
            if (part.Count > 0 && length + 1 + line.Text.Length > Longest)
            {
                yield return part;
                (part, length) = ([], 0);
            }

            length += line.Text.Length + (part.Count > 0 ? 1 : 0);
            part.Add(line);
        }

        yield return part;
    }

    private static string Plain(IReadOnlyList<Piece> part) => string.Join('\n', part.Select(line => line.Text));

    private static string Html(IReadOnlyList<Piece> part)
    {
        var html = new StringBuilder();
        for (var at = 0; at < part.Count; at++)
        {
            var line = part[at];
            var follows = at > 0 && part[at - 1].Look == Look.Fixed && line.Look == Look.Fixed;
            var goesOn = at + 1 < part.Count && line.Look == Look.Fixed && part[at + 1].Look == Look.Fixed;
            html.Append(at > 0 ? "\n" : "")
                .Append(follows ? "" : Opening(line))
                .Append(Escaped(line.Text))
                .Append(goesOn ? "" : Closing(line));
        }

        return html.ToString();
    }

    private static string Opening(Piece line) => line.Tag is { } tag ? $"<{tag}>" : "";

    private static string Closing(Piece line) => line.Tag is { } tag ? $"</{tag}>" : "";

    private static string Escaped(string text) => text
        .Replace("&", "&amp;", StringComparison.Ordinal)
        .Replace("<", "&lt;", StringComparison.Ordinal)
        .Replace(">", "&gt;", StringComparison.Ordinal);

    private sealed record Piece(string Text, Look Look)
    {
        // An empty tag is no error, but no use either.
        public string? Tag => Look switch
        {
            Look.Strong when Text.Length > 0 => "b",
            Look.Fixed => "pre",
            Look.Copied when Text.Length > 0 => "code",
            _ => null,
        };
    }
}
