using System.Globalization;
using System.Text.RegularExpressions;
using StudioBot.Chat.Tests.Support;

namespace StudioBot.Chat.Tests.Whole;

/// <summary>Whether one row is understood as it says: kind, command, and every key within 0.1 %.</summary>
internal static partial class MessageVerdict
{
    /// <summary>What differs; none where nothing does.</summary>
    public static string? Of(MessageRow row)
    {
        var heard = Sample.Hear(row.Text, row.Chat);
        if (heard.Kind != row.ExpectedKind)
        {
            return $"is {heard.Kind} ({heard.Command}: {Show(heard)} {heard.Error}), not {row.ExpectedKind}";
        }

        if (row.Kind == "ignore")
        {
            return null;
        }

        if (row.Command.Length > 0 && heard.Command != row.Command)
        {
            return $"is {heard.Command}, not {row.Command} {heard.Error}";
        }

        return row.Kind == "error" ? Blame(row, heard) : Keys(row, heard);
    }

    private static string? Blame(MessageRow row, HeardLine heard)
    {
        var quoted = Quoted().Matches(row.Note).Select(match => match.Groups[1].Value).ToList();
        return quoted.Count == 0 || quoted.Any(word => Alike(word, heard.Error!.Word))
            ? null
            : $"blames “{heard.Error!.Word}” ({heard.Error.Why}), not {string.Join(" or ", quoted)}";
    }

    private static string? Keys(MessageRow row, HeardLine heard)
    {
        string? text = null;
        foreach (var (command, key, value) in row.Meanings())
        {
            if (key.StartsWith("answer", StringComparison.Ordinal))
            {
                text ??= Sample.Answer(row.Text, row.Chat)?.PlainText ?? "";
                if (!Holds(text, key, value))
                {
                    return $"the answer lacks {key}={value}: {text.ReplaceLineEndings(" | ")}";
                }

                continue;
            }

            var meant = heard.Understood.GetValueOrDefault(command)?.FirstOrDefault(meaning => meaning.Key == key);
            if (meant is null || !Same(meant.Value, value))
            {
                return $"{key} is {meant?.Value ?? "missing"}, not {value} ({Show(heard)})";
            }
        }

        return null;
    }

    private static bool Same(string said, string expected)
    {
        if (string.Equals(said, expected, StringComparison.OrdinalIgnoreCase))
        {
            return true;
        }

        var (left, right) = (Number().Matches(said), Number().Matches(expected));
        return left.Count == right.Count && left.Count > 0
            && Number().Replace(said, "#") == Number().Replace(expected, "#")
            && left.Zip(right).All(pair => Near(Value(pair.First), Value(pair.Second), 0));
    }

    private static bool Holds(string text, string key, string value)
    {
        if (key == "answer_cheaper")
        {
            return text.Contains(value == "equal" ? "equal" : "cheaper", StringComparison.OrdinalIgnoreCase);
        }

        var figures = Number().Matches(text).Select(Value).ToList();
        var leeway = key is "answer_dew_c" or "answer_margin_c" ? 0.2 : 0.05;
        return Number().Matches(value).Select(Value).All(wanted => figures.Any(figure => Near(figure, wanted, leeway)));
    }

    private static bool Near(double left, double right, double leeway) =>
        Math.Abs(left - right) <= Math.Max(leeway, Math.Max(0.0006, Math.Abs(right) * 0.001));

    private static double Value(Match match) => double.Parse(match.Value, CultureInfo.InvariantCulture);

    private static bool Alike(string quoted, string word)
    {
        var (left, right) = (Squeezed(quoted), Squeezed(word));
        var isOneInOther = left.Contains(right, StringComparison.OrdinalIgnoreCase)
            || right.Contains(left, StringComparison.OrdinalIgnoreCase);
        return (right.Length > 0 && isOneInOther)
            || quoted.Split(' ').All(part => word.Contains(part, StringComparison.OrdinalIgnoreCase));
    }

    private static string Squeezed(string text) => text.Replace(" ", "", StringComparison.Ordinal);

    private static string Show(HeardLine heard) => string.Join(" || ", heard.Understood.Values.Select(Show));

    private static string Show(IReadOnlyList<StudioBot.Chat.Reading.Meaning> meanings) =>
        string.Join(';', meanings.Select(meaning => $"{meaning.Key}={meaning.Value}"));

    [GeneratedRegex(@"-?\d+(\.\d+)?")]
    private static partial Regex Number();

    [GeneratedRegex("'([^']+)'")]
    private static partial Regex Quoted();
}
