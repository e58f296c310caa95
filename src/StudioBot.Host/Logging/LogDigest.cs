using System.Text.Json;
using System.Text.RegularExpressions;

namespace StudioBot.Host.Logging;

/// <summary>What of a log may be handed on: when what happened where, and through which places of the program an
/// exception went; none of the words, as they may repeat what somebody wrote.</summary>
internal static partial class LogDigest
{
    /// <summary>How many lines of a log are handed on.</summary>
    public const int MostLines = 200;

    /// <summary>The last lines of a log, each without its words; a line that is none of ours is left out.</summary>
    public static IReadOnlyList<string> Of(IEnumerable<string> log) =>
        [.. log.Select(Line).OfType<string>().TakeLast(MostLines)];

    private static string? Line(string line)
    {
        // Whoever keeps the log may have put its own moment and the machine's name before ours.
        var plain = Plain(line);
        var head = Head().Match(plain);
        if (!head.Success)
        {
            return null;
        }

        var places = Place().Matches(plain[(head.Index + head.Length)..])
            .Select(match => match.Value.Trim(' ', '|', '('));
        var entry = head.Value.TrimEnd(':', ' ');
        var of = entry.IndexOf(LineLog.Of, StringComparison.Ordinal);
        return string.Join(LineLog.LineEnd, places.Prepend(of < 0 ? entry : entry[..of]));
    }

    // An entry of JSON as the line that it would have been.
    private static string Plain(string line)
    {
        if (!line.StartsWith('{'))
        {
            return line;
        }

        try
        {
            using var json = JsonDocument.Parse(line);
            string Of(string name) => json.RootElement.TryGetProperty(name, out var value) ? value.ToString() : "";
            var number = Of("event");
            return $"{Of("at")} {Of("level")} {Of("from")}{(number.Length > 0 ? " " : "")}{number}: "
                + $"{Of("text")}{LineLog.LineEnd}{Of("exception")}";
        }
        catch (JsonException)
        {
            // Another program's line, or the half of one of ours.
            return "";
        }
    }

    [GeneratedRegex(
        @"[0-9]{4}-[0-9]{2}-[0-9]{2}T[0-9:.]{12}Z (?:Trace|Debug|Information|Warning|Error|Critical)"
            + @" [A-Za-z][A-Za-z0-9.]*(?: [0-9]+)?(?: of [^:]*)?: ",
        RegexOptions.NonBacktracking | RegexOptions.CultureInvariant)]
    private static partial Regex Head();

    [GeneratedRegex(
        @" \| (?:at )?(?:StudioBot|System|Microsoft|Telegram|Quartz|Polly|Dapper|SkiaSharp|ScottPlot)"
            + @"\.[A-Za-z0-9_.<>`+]+(?:\(|Exception)?",
        RegexOptions.NonBacktracking | RegexOptions.CultureInvariant)]
    private static partial Regex Place();
}
