using System.Globalization;

namespace StudioBot.Chat.Exporting;

/// <summary>Keeps what somebody wrote from being taken as a formula by a spreadsheet.</summary>
/// <remarks>A line that begins, after blanks, with a sign a formula begins with gets an apostrophe before it. One that
/// begins with an apostrophe before such a line gets another, so that taking one off each gives back what was
/// written.</remarks>
internal static class FormulaShield
{
    private const char Apostrophe = '\'';

    // With their full-width, small and mathematical twins.
    private const string Signs = "=+-@\t\r＝＋－＠﹦﹢﹣﹫−";

    /// <summary>The words, safe to be opened in a spreadsheet.</summary>
    public static string Put(string words) =>
        string.Concat(LinesOf(words).Select(line => NeedsIt(line) ? Apostrophe + line : line));

    /// <summary>The words as they were before.</summary>
    public static string Take(string words) =>
        string.Concat(LinesOf(words).Select(line =>
            line.StartsWith(Apostrophe) && NeedsIt(line[1..]) ? line[1..] : line));

    private static bool NeedsIt(string line)
    {
        var rest = line.AsSpan().TrimStart(Apostrophe);
        foreach (var letter in rest)
        {
            if (Signs.Contains(letter, StringComparison.Ordinal))
            {
                return true;
            }

            if (!IsBlank(letter))
            {
                return false;
            }
        }

        return false;
    }

    // Also what shows as nothing: marks of direction, joiners, the mark of byte order.
    private static bool IsBlank(char letter) => char.GetUnicodeCategory(letter)
        is UnicodeCategory.SpaceSeparator
        or UnicodeCategory.LineSeparator
        or UnicodeCategory.ParagraphSeparator
        or UnicodeCategory.Format
        or UnicodeCategory.Control;

    // Each with what ends it: a line feed, a return, or both.
    private static IEnumerable<string> LinesOf(string words)
    {
        var start = 0;
        for (var at = 0; at < words.Length; at++)
        {
            if (words[at] == '\n' || (words[at] == '\r' && words.ElementAtOrDefault(at + 1) != '\n'))
            {
                yield return words[start..(at + 1)];
                start = at + 1;
            }
        }

        yield return words[start..];
    }
}
