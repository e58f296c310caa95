using System.Text;

namespace StudioBot.Host.Tests.Support;

/// <summary>Reads the service's HTML as strictly as the service does.</summary>
internal static class MarkupRules
{
    private static readonly string[] Known =
    [
        "b", "strong", "i", "em", "u", "ins", "s", "strike", "del", "code", "pre", "a", "span", "tg-spoiler",
        "blockquote",
    ];

    /// <summary>The words that are left when the markup is read, or why it can't be.</summary>
    public static (string Text, string? Trouble) Read(string html)
    {
        var text = new StringBuilder();
        var open = new Stack<string>();
        for (var at = 0; at < html.Length;)
        {
            if (html[at] == '<')
            {
                var end = html.IndexOf('>', at);
                if (end < 0)
                {
                    return ("", Cant($"Unclosed start tag at byte offset {at}"));
                }

                if (Tag(html[(at + 1)..end], open, at) is { } trouble)
                {
                    return ("", trouble);
                }

                at = end + 1;
                continue;
            }

            at += Character(html, at, text);
        }

        return open.TryPeek(out var left)
            ? ("", Cant($"Can't find end tag corresponding to start tag \"{left}\""))
            : (text.ToString(), null);
    }

    private static string? Tag(string inside, Stack<string> open, int at)
    {
        var isEnd = inside.StartsWith('/');
        var name = inside.TrimStart('/').Split(' ')[0];
        if (!Known.Contains(name))
        {
            return Cant($"Unsupported start tag \"{name}\" at byte offset {at}");
        }

        if (!isEnd)
        {
            open.Push(name);
            return null;
        }

        return open.TryPop(out var expected) && expected == name
            ? null
            : Cant($"Unmatched end tag at byte offset {at}, expected \"</{expected}>\", found \"</{name}>\"");
    }

    private static int Character(string html, int at, StringBuilder text)
    {
        foreach (var (written, meant) in new[] { ("&lt;", '<'), ("&gt;", '>'), ("&amp;", '&'), ("&quot;", '"') })
        {
            if (string.CompareOrdinal(html, at, written, 0, written.Length) == 0)
            {
                text.Append(meant);
                return written.Length;
            }
        }

        text.Append(html[at]);
        return 1;
    }

    private static string Cant(string why) => "Bad Request: can't parse entities: " + why;
}
