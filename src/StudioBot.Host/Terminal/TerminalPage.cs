using StudioBot.Chat.Replies;

namespace StudioBot.Host.Terminal;

/// <summary>Writes replies to a terminal, or plainly into a pipe.</summary>
internal sealed class TerminalPage(TextWriter to, bool hasColour)
{
    private const int Width = 78;
    private const string Bold = "\e[1m";
    private const string Cyan = "\e[36m";
    private const string Yellow = "\e[33m";
    private const string Dim = "\e[2m";
    private const string Off = "\e[0m";

    /// <summary>The blocks from top to bottom, the buttons under them.</summary>
    public void Write(Reply reply)
    {
        foreach (var block in reply.Blocks)
        {
            Write(block);
        }

        foreach (var row in ButtonRows(reply.Buttons))
        {
            Line(row, Dim);
        }

        to.Flush();
    }

    /// <summary>The line that a button stands for: it is a message like any other.</summary>
    public void WritePressed(string line) => Line("» " + line, Dim);

    /// <summary>A line of the terminal's own, below an answer.</summary>
    public void WriteNote(string line)
    {
        Line(line, Dim);
        to.Flush();
    }

    private void Write(Block block)
    {
        switch (block)
        {
            case Block.Headline headline:
                Line(headline.Text, Bold);
                break;
            case Block.Line line:
                Line(line.Text, "");
                break;
            case Block.Figures figures:
                foreach (var row in FigureTable.Lines(figures.Rows))
                {
                    Line(row, "");
                }

                break;
            case Block.Sample sample:
                Line("  " + sample.Text, Cyan);
                break;
            case Block.Caution caution:
                Line("! " + caution.Text, Yellow);
                break;
            default:
                throw new ArgumentOutOfRangeException(nameof(block), block, "A block without a look.");
        }
    }

    private void Line(string text, string look)
    {
        foreach (var line in text.Split('\n'))
        {
            to.WriteLine(hasColour && look.Length > 0 ? look + Harmless(line) + Off : Harmless(line));
        }
    }

    // What was typed comes back in replies; a terminal must not take it for orders.
    private static string Harmless(string line) =>
        string.Create(line.Length, line, (letters, source) =>
        {
            for (var at = 0; at < source.Length; at++)
            {
                letters[at] = char.IsControl(source[at]) || source[at] is '\u2028' or '\u2029' ? ' ' : source[at];
            }
        });

    private static IEnumerable<string> ButtonRows(IReadOnlyList<Button> buttons)
    {
        var row = "";
        for (var at = 0; at < buttons.Count; at++)
        {
            var key = $"[{(char)('a' + at)}] {buttons[at].Label}";
            if (row.Length > 0 && row.Length + 2 + key.Length > Width)
            {
                yield return row;
                row = "";
            }

            row += (row.Length > 0 ? "  " : "") + key;
        }

        if (row.Length > 0)
        {
            yield return row;
        }
    }
}
