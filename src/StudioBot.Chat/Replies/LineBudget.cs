namespace StudioBot.Chat.Replies;

/// <summary>Whether a reply fits a phone held in a gloved hand.</summary>
public static class LineBudget
{
    /// <summary>The characters in one line of a phone.</summary>
    public const int Width = 40;

    /// <summary>The lines one sees without scrolling.</summary>
    public const int Lines = 12;

    /// <summary>The lines this reply takes when words wrap at <see cref="Width"/>.</summary>
    public static int Of(Reply reply)
    {
        ReadOnlySpan<char> words = reply.PlainText;
        var lines = 0;
        foreach (var line in words.Split('\n'))
        {
            lines += Wrapped(words[line]);
        }

        return lines;
    }

    /// <summary>Whether no row of figures is wider than a phone shows unwrapped.</summary>
    public static bool FiguresFit(Reply reply) => reply.Blocks.OfType<Block.Figures>()
        .SelectMany(figures => FigureTable.Lines(figures.Rows))
        .All(row => row.Length <= FigureTable.Width);

    private static int Wrapped(ReadOnlySpan<char> line)
    {
        var (lines, used) = (1, 0);
        foreach (var word in line.Split(' '))
        {
            var length = line[word].Length;
            if (used > 0 && used + 1 + length > Width)
            {
                (lines, used) = (lines + 1, 0);
            }

            used += (used > 0 ? 1 : 0) + length;
            lines += (used - 1) / Width;
            used = used > Width ? used % Width : used;
        }

        return lines;
    }
}
