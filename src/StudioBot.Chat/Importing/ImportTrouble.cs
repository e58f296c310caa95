namespace StudioBot.Chat.Importing;

/// <summary>What keeps a file from being taken.</summary>
/// <param name="Line">The line of the file on which its row begins, counted from 1.</param>
/// <param name="Column">The name of the column; none where it is about the whole line.</param>
/// <param name="What">What is wrong.</param>
/// <param name="Works">What would work.</param>
public sealed record ImportTrouble(int Line, string? Column, string What, string Works)
{
    private const int Longest = 30;

    /// <inheritdoc/>
    public override string ToString() =>
        $"Line {Line}{(Column is { } column ? $", {column}" : "")}: {What}. {Works}";

    // What somebody wrote, short and on one line, with nothing in it that a terminal would obey.
    internal static string Quoted(string text)
    {
        var words = string.Concat(text.EnumerateRunes().Take(Longest)
            .Select(letter => Reads(letter) ? letter.ToString() : " "));
        return $"“{words.Trim()}{(text.EnumerateRunes().Skip(Longest).Any() ? "…" : "")}”";
    }

    // Marks of direction show as nothing and turn the rest of a line around.
    internal static bool Reads(System.Text.Rune letter) => System.Text.Rune.GetUnicodeCategory(letter)
        is not (System.Globalization.UnicodeCategory.Control
            or System.Globalization.UnicodeCategory.Format
            or System.Globalization.UnicodeCategory.LineSeparator
            or System.Globalization.UnicodeCategory.ParagraphSeparator);
}
